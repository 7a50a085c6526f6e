### The texts of the exercise in grip-hold.toml, in Spanish.

name = Apretar una toalla enrollada
purpose = Da fuerza al agarre sin mover la muñeca.
set-up = Siéntese con el antebrazo indicado sobre una mesa y sujete una toalla enrollada, del grosor de un palo de escoba.
step-1 = Mantenga la muñeca recta.
step-2 = Apriete el rollo despacio, con la fuerza que diga su nivel.
step-3 = Quédese ahí y respire.
step-4 = Abra la mano despacio.
should-feel = Los músculos de la mano y del antebrazo trabajan.
should-not-feel = Dolor agudo en una articulación u hormigueo en los dedos.

mistake-1 = Doblar la muñeca.
mistake-2 = Apretar de golpe.
mistake-3 = Subir el hombro.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si aún se recupera de una fractura o una operación de la muñeca o la mano.
careful-2 = Consulte antes con su clínica si se le duermen los dedos por la noche o ha perdido fuerza al agarrar.
careful-3 = Consulte antes con su clínica si no tiene controlada la presión arterial (tensión), si tiene una enfermedad del corazón o de la retina, o si le operaron de los ojos hace poco.

# Safety: signs to stop at once.
stop-1 = Hormigueo o pérdida de sensibilidad nuevos en los dedos, o una mano que pierde fuerza.
stop-2 = Una muñeca caliente, roja o hinchada.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-light-name = Apretar poco
level-light-change = Alrededor de una cuarta parte de su fuerza.
level-firm-name = Apretar más
level-firm-change = Alrededor de la mitad de su fuerza.
