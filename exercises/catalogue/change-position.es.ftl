### The texts of the exercise in change-position.toml, in Spanish.

name = Cambie de posición
purpose = Ninguna posición es buena mucho rato. Cambiar cada hora alivia la espalda, el cuello y las piernas.
set-up = Donde esté, sentado o de pie, en el trabajo.
step-1 = Si está sentado, levántese, estírese y dé unos pasos.
step-2 = Si está de pie, siéntese o apoye un pie en alto.
step-3 = Siéntese o quédese después de otra manera que antes.
should-feel = Un alivio breve.
should-not-feel = Mareo al levantarse.

mistake-1 = Solo removerse en la silla.

# Safety: precautions.
careful-1 = Levántese despacio si suele marearse, con algo firme al alcance de la mano.

# Safety: signs to stop at once.
stop-1 = Mareo o aturdimiento: siéntese. Si no se pasa en unos minutos, llame a su clínica.

# Levels, from easy to hard.
level-stand-up-name = Sentado, de pie, andando
level-stand-up-change = Sirve cualquier otra posición.
