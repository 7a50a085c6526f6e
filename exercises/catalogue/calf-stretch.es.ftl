### The texts of the exercise in calf-stretch.toml, in Spanish.

name = Estiramiento de la pantorrilla
purpose = Permite que el tobillo se doble más al caminar, agacharse o bajar escaleras.
set-up = Póngase de pie frente a una encimera firme, con las dos manos en ella. Lleve la pierna que va a estirar un paso largo hacia atrás, con los dedos mirando al frente y el talón apoyado.
step-1 = Mantenga la rodilla de atrás recta y el talón en el suelo.
step-2 = Doble despacio la rodilla de delante y deje que la cadera avance hasta notar un tirón en la pantorrilla de atrás.
step-3 = Quédese así y respire con calma. Deje que el tirón se pase solo; no rebote.
step-4 = Vuelva despacio, empujando suavemente con las manos.
should-feel = Un tirón constante y suave en la pantorrilla, que podría soportar mucho tiempo.
should-not-feel = Dolor en el tendón por encima del talón o delante del tobillo, calambre u hormigueo en el pie.

mistake-1 = Girar hacia fuera el pie de atrás o dejar que se hunda su borde interior.
mistake-2 = Levantar el talón.
mistake-3 = Rebotar, o seguir con dolor.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si ha tenido una rotura muscular, una operación o un trombo en esta pierna.
careful-2 = Hágalo donde pueda sujetarse con las dos manos.

# Safety: signs to stop at once.
stop-1 = Un chasquido repentino o una sensación de pedrada en la pantorrilla: busque atención médica urgente.
stop-2 = Pérdida de sensibilidad u hormigueo nuevos en el pie.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-knee-straight-name = Rodilla recta
level-knee-straight-change = Con la rodilla recta se estira la parte alta de la pantorrilla.
level-knee-bent-name = Rodilla doblada
level-knee-bent-change = Con la rodilla doblada se estira la parte baja de la pantorrilla.
level-knee-bent-set-up = Póngase de pie frente a una encimera firme, con las dos manos en ella. Lleve la pierna que va a estirar medio paso hacia atrás, con los dedos mirando al frente y el talón apoyado.
level-knee-bent-step-1 = Doble despacio las dos rodillas, con los talones en el suelo, hasta notar un tirón en la parte baja de la pantorrilla de atrás.
level-knee-bent-step-2 = Deje que la rodilla avance recta por encima de los dedos.
level-knee-bent-step-3 = Quédese así y respire con calma. No rebote.
level-knee-bent-step-4 = Estire despacio las rodillas, empujando suavemente con las manos.
