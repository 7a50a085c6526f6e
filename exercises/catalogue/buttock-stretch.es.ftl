### The texts of the exercise in buttock-stretch.toml, in Spanish.

name = Estirar el glúteo
purpose = Estira la parte de atrás de la cadera.
set-up = Acuéstese boca arriba con las rodillas dobladas. Ponga el tobillo indicado sobre el otro muslo, justo por encima de la rodilla.
step-1 = Sujete el otro muslo con las dos manos y acérquelo hasta notar tirantez en el glúteo indicado.
step-2 = Deje que la rodilla indicada se aleje de usted.
step-3 = Quédese ahí y respire.
step-4 = Apoye el pie despacio.
should-feel = Una tirantez en el glúteo.
should-not-feel = Un pellizco en la ingle, dolor en la rodilla o dolor que baja por la pierna.

mistake-1 = Levantar la cabeza.
mistake-2 = Empujar con fuerza la rodilla indicada.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene una prótesis de cadera o ha tenido una fractura de cadera: puede que algunos movimientos aún no le convengan.
careful-2 = Consulte antes con su clínica si tiene una lesión reciente de rodilla o aún se recupera de una operación de rodilla.
careful-3 = Si no puede levantarse del suelo sin ayuda, hágalo en una cama firme o consulte antes con su clínica.

# Safety: signs to stop at once.
stop-1 = Pérdida de sensibilidad en los genitales o alrededor del ano, dificultad nueva para orinar o para controlar la orina o las heces, o dolor o debilidad en las dos piernas: busque atención médica urgente.
stop-2 = Dolor que baja por la pierna, o dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-light-name = Tirantez ligera
level-light-change = Una tirantez que podría aguantar mucho tiempo.
level-clear-name = Tirantez clara
level-clear-change = Una tirantez clara que no duele.
