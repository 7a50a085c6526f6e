### The texts of the exercise in thigh-tighten-lying.toml, in Spanish.

name = Apretar el muslo, boca arriba
purpose = Activa pronto la parte de delante del muslo, por ejemplo después de una operación.
set-up = Acuéstese boca arriba, con una toalla enrollada debajo de la rodilla indicada y la otra rodilla doblada.
step-1 = Lleve la punta del pie hacia usted.
step-2 = Apriete la parte de atrás de la rodilla contra el rollo y tense la parte de delante del muslo.
step-3 = Quédese ahí y respire.
step-4 = Suelte despacio.
should-feel = La parte de delante del muslo se pone firme y la rótula sube un poco.
should-not-feel = Dolor agudo en la rodilla.

mistake-1 = Aguantar la respiración.
mistake-2 = Levantar la pelvis.
mistake-3 = Soltar de golpe.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene una prótesis o aún se recupera de una operación o fractura de la pierna.
careful-2 = Si se marea al acostarse o al levantarse, hágalo despacio y póngase primero de lado.

# Safety: signs to stop at once.
stop-1 = Dolor en la pantorrilla con hinchazón, calor o enrojecimiento: busque atención médica urgente.
stop-2 = Una rodilla que se bloquea, falla o se hincha.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-flat-name = El talón se queda
level-flat-change = Apriete la rodilla contra el rollo; el talón se queda en la colchoneta.
level-heel-up-name = El talón se levanta
level-heel-up-change = Apriete la rodilla contra el rollo hasta que el talón se separe de la colchoneta.
