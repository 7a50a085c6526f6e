### The texts of the exercise in chest-open-side-lying.toml, in Spanish.

name = Abrir el pecho, de costado
purpose = Suelta el giro de la espalda alta.
set-up = Acuéstese sobre el lado contrario al indicado, con una almohada bajo la cabeza, las caderas y las rodillas dobladas y los dos brazos hacia delante, uno encima del otro.
step-1 = Suba el brazo de arriba y llévelo al otro lado; los ojos lo siguen.
step-2 = Deje girar el pecho; las rodillas siguen juntas en la colchoneta.
step-3 = Quédese ahí una respiración.
step-4 = Vuelva despacio.
should-feel = Un estiramiento en el pecho y la espalda alta.
should-not-feel = Un pellizco en el hombro u hormigueo en el brazo.

mistake-1 = Separar las rodillas.
mistake-2 = Forzar el brazo hasta el suelo.
mistake-3 = Aguantar la respiración.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene osteoporosis o ha tenido una fractura de la columna.
careful-2 = Consulte antes con su clínica si ha tenido una luxación de hombro, o si aún se recupera de una operación del hombro.
careful-3 = Si le duele acostarse sobre el lado de abajo, use una colchoneta gruesa o dígalo en la consulta.

# Safety: signs to stop at once.
stop-1 = Hormigueo, debilidad o pérdida de sensibilidad nuevos en un brazo o una mano.
stop-2 = Un hombro que se sale de su sitio: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-small-name = Corto
level-small-change = Más o menos la mitad de lo que podría.
level-full-name = Hasta donde sea cómodo
level-full-change = Hasta donde empieza a tirar, y no más.
