### The texts of the exercise in finger-spread.toml, in Spanish.

name = Separar los dedos
purpose = Fortalece los músculos que abren la mano.
set-up = Siéntese con el codo indicado doblado y los dedos y el pulgar juntos. Si su nivel lleva goma, póngala alrededor, justo debajo de las uñas.
step-1 = Separe los dedos y el pulgar tanto como pueda.
step-2 = Quédese ahí un momento.
step-3 = Júntelos despacio.
should-feel = Un trabajo ligero en la mano y en el dorso del antebrazo.
should-not-feel = Dolor en una articulación, o una goma que se clava en la piel.

mistake-1 = Doblar la muñeca hacia atrás.
mistake-2 = Dejar que la goma salte hacia la cara.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si aún se recupera de una fractura o una operación de la muñeca o la mano.
careful-2 = Consulte antes con su clínica si se le duermen los dedos por la noche o ha perdido fuerza al agarrar.

# Safety: signs to stop at once.
stop-1 = Hormigueo o pérdida de sensibilidad nuevos en los dedos, o una mano que pierde fuerza.
stop-2 = Un dedo que se bloquea, se pone pálido o azul, o se hincha.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-bare-name = Sin goma
level-bare-change = Sin nada que oponga resistencia.
level-band-name = Con goma
level-band-change = Una goma ancha alrededor de las puntas de los dedos y del pulgar.
