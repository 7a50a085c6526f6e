### The texts of the exercise in foot-arch-lift.toml, in Spanish.

name = Elevar el arco del pie
purpose = Entrena los pequeños músculos que sostienen el arco del pie.
set-up = Siéntese en una silla, con el pie indicado sin calzado y apoyado en el suelo debajo de la rodilla.
step-1 = Reparta el peso entre el talón, la parte delantera y los dedos.
step-2 = Acerque la parte delantera del pie al talón, de modo que el arco suba. Los dedos siguen estirados.
step-3 = Quédese ahí y respire.
step-4 = Suelte despacio.
should-feel = Un trabajo ligero en la planta del pie.
should-not-feel = Un calambre que no se pasa o dolor debajo del talón.

mistake-1 = Encoger los dedos.
mistake-2 = Girar el pie hacia fuera.
mistake-3 = Aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si aún se recupera de una fractura o una operación del tobillo o el pie.
careful-2 = Si le da un calambre en el pie, pare, sacúdalo y apriete menos la próxima vez.

# Safety: signs to stop at once.
stop-1 = Un pie que ha perdido fuerza o sensibilidad hace poco: busque atención médica urgente.
stop-2 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-sitting-name = En la silla
level-sitting-change = En una silla, con poco peso sobre el pie.
level-standing-name = De pie
level-standing-change = Sobre los dos pies, con más peso en el arco.
level-standing-set-up = Póngase de pie sin calzado, con los pies separados al ancho de las caderas y junto a un apoyo firme.
level-standing-step-1 = Reparta el peso entre el talón, la parte delantera y los dedos.
level-standing-step-2 = Acerque la parte delantera del pie indicado al talón, de modo que el arco suba. Los dedos siguen estirados.
level-standing-step-3 = Quédese ahí y respire.
level-standing-step-4 = Suelte despacio.
