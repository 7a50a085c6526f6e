### The texts of the exercise in knee-straighten.toml, in Spanish.

name = Estirar la rodilla, en la silla
purpose = Fortalece la parte delantera del muslo, para que la rodilla se estire del todo y aguante en las escaleras.
set-up = Siéntese bien atrás en una silla estable, con las manos a los lados sobre el asiento y los muslos apoyados.
step-1 = Lleve hacia arriba la punta del pie indicado.
step-2 = Estire la rodilla hasta donde llegue sin dolor.
step-3 = Apriete la parte delantera del muslo y quédese ahí.
step-4 = Baje el pie despacio.
should-feel = El músculo de encima de la rótula trabaja; quizá note un tirón suave detrás de la rodilla.
should-not-feel = Un roce doloroso bajo la rótula, o un dolor como una descarga que baja por detrás de la pierna.

mistake-1 = Echarse hacia atrás para ayudarse.
mistake-2 = Lanzar la pierna hacia arriba.
mistake-3 = Dejar caer el pie.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si le operaron de los ligamentos de la rodilla: puede que aún no deba estirarla contra resistencia.
careful-2 = Si nota hormigueo al estirar la pierna, súbala menos y dígalo en la consulta.

# Safety: signs to stop at once.
stop-1 = Una rodilla que se bloquea, falla o se hincha.
stop-2 = Dolor en la pantorrilla con hinchazón, calor o enrojecimiento: busque atención médica urgente.
stop-3 = Dolor por encima del límite de su plan.

# Levels, from easy to hard.
level-bare-leg-name = Solo la pierna
level-bare-leg-change = Sin nada en el pie.
level-shoe-name = Con calzado firme
level-shoe-change = El calzado añade un poco de peso.
level-ankle-weight-name = Con un peso ligero
level-ankle-weight-change = Alrededor de un kilo en el tobillo.
