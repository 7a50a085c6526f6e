### The texts of the exercise in chin-nod-lying.toml, in Spanish.

name = Gesto de decir sí, boca arriba
purpose = Activa los músculos profundos de la parte delantera del cuello, que sostienen la cabeza sin esfuerzo.
set-up = Acuéstese boca arriba, con las rodillas dobladas y las plantas de los pies apoyadas. Ponga una toalla doblada bajo la cabeza, para que la frente y la barbilla queden a la misma altura.
step-1 = Deje que la cabeza pese y relaje la mandíbula, con los dientes un poco separados.
step-2 = Diga que sí con un gesto muy pequeño: la barbilla baja hacia la garganta y la parte de atrás de la cabeza se desliza hacia arriba por la toalla.
step-3 = Llegue solo hasta donde la parte delantera de la garganta siga blanda. Si se pone dura, baje menos la barbilla.
step-4 = Quédese ahí y respire con calma.
step-5 = Vuelva despacio a la posición inicial.
should-feel = Un trabajo ligero y profundo en la parte delantera del cuello, y la nuca que se estira. Debería parecerle casi demasiado fácil.
should-not-feel = Músculos tensos y marcados en la garganta, temblor, dolor, mareo o presión en los oídos.

mistake-1 = Levantar la cabeza de la toalla.
mistake-2 = Apretar la cabeza contra la toalla.
mistake-3 = Apretar los dientes o aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido hace poco una lesión o una operación del cuello, o si tiene artritis reumatoide.
careful-2 = Si se marea al acostarse o al levantarse, hágalo despacio y póngase primero de lado.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Visión doble, dificultad para hablar o tragar, cara dormida o caída, un dolor de cabeza repentino e intenso, inestabilidad repentina al estar de pie o un desmayo: busque atención médica urgente.
stop-3 = Mareo o aturdimiento: pare y siéntese o acuéstese. Si no se pasa en unos minutos o vuelve, llame a su clínica antes de repetir el ejercicio. Si aparece alguna de las señales de arriba: busque atención médica urgente.
stop-4 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-head-heavy-name = Cabeza apoyada en la toalla
level-head-heavy-change = La cabeza descansa con todo su peso y solo rueda.
level-head-light-name = Cabeza ligera sobre la toalla
level-head-light-change = Después del gesto, deje descansar un poco menos el peso de la cabeza, sin levantarla de la toalla. Si la garganta se pone dura por delante, vuelva a apoyar todo el peso.
