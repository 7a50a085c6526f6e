### The texts of the exercise in half-kneel-hip-stretch.toml, in Spanish.

name = Estirar la cadera, con una rodilla
purpose = Estira la parte de delante de la cadera.
set-up = Apoye en el suelo la rodilla indicada sobre un cojín, con el otro pie apoyado delante y una mano en una silla al lado.
step-1 = Lleve el cóccix hacia abajo para que la zona lumbar no se arquee.
step-2 = Lleve la pelvis hacia delante hasta notar tirantez delante de la cadera indicada.
step-3 = Quédese ahí y respire.
step-4 = Vuelva despacio.
should-feel = Una tirantez delante de la cadera y del muslo.
should-not-feel = Dolor en la zona lumbar o en la rótula.

mistake-1 = Arquear la zona lumbar.
mistake-2 = Inclinarse hacia delante.
mistake-3 = Girar la pelvis.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene una prótesis de cadera o ha tenido una fractura de cadera: puede que algunos movimientos aún no le convengan.
careful-2 = Si le duele apoyar las rodillas, ponga un cojín debajo o dígalo en la consulta.
careful-3 = Si no puede levantarse del suelo sin ayuda, hágalo en una cama firme o consulte antes con su clínica.

# Safety: signs to stop at once.
stop-1 = Una caída, o haber estado a punto de caerse.
stop-2 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-light-name = Tirantez ligera
level-light-change = Una tirantez que podría aguantar mucho tiempo.
level-clear-name = Tirantez clara
level-clear-change = Una tirantez clara que no duele.
