### The texts of the exercise in warm-pack.toml, in Spanish.

name = Compresa caliente
purpose = Relaja los músculos tensos y alivia una molestia durante un rato.
set-up = Siéntese o acuéstese cómodamente. Envuelva una compresa caliente o una bolsa de agua en un paño y póngala donde le molesta.
step-1 = Debe notar un calor agradable, nunca que quema.
step-2 = Respire con calma y deje que la zona pese.
step-3 = Mire la piel a los cinco minutos y retire la compresa cuando acabe el tiempo.
should-feel = Un calor agradable y músculos más blandos.
should-not-feel = Quemazón, picor o latidos.

mistake-1 = Poner la compresa directamente sobre la piel.
mistake-2 = Acostarse encima o quedarse dormido con ella.

# Safety: precautions.
careful-1 = No la use donde note menos el calor o el dolor que en otras partes, sobre una lesión reciente ni sobre piel inflamada, abierta o dormida.
careful-2 = Consulte antes con su clínica si tiene diabetes, mala circulación o cáncer, o si está embarazada.

# Safety: signs to stop at once.
stop-1 = Piel que arde, se ampolla o queda roja a manchas: retire la compresa y enfríe la piel con agua.
stop-2 = Una molestia que late más con el calor, o una zona caliente e hinchada por sí sola: pare y llame hoy a su clínica.

# Levels, from easy to hard.
level-over-cloth-name = Sobre un paño
level-over-cloth-change = Siempre con un paño entre la compresa y la piel.
