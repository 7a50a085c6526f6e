### The texts of the exercise in slow-breath.toml, in Spanish.

name = Respiración lenta
purpose = Calma el cuerpo y suelta el cuello y los hombros, que se tensan con el estrés o el dolor.
set-up = Siéntese cómodamente en una silla, con los pies apoyados y las manos sobre el vientre.
step-1 = Inspire por la nariz. Note cómo el vientre va hacia las manos.
step-2 = Espire despacio con los labios apenas cerrados, más tiempo del que inspiró.
step-3 = Siga la plomada o los tonos. Si el ritmo no le va bien, respire como quiera y vuelva a unirse.
should-feel = Más calma con cada respiración; los hombros pesan.
should-not-feel = Mareo, hormigueo alrededor de la boca o sensación de falta de aire.

mistake-1 = Inspirar lo más hondo posible.
mistake-2 = Subir los hombros.

# Safety: precautions.
careful-1 = Consulte antes con su clínica si tiene una enfermedad de los pulmones o del corazón.
careful-2 = No lo haga mientras conduce ni dentro del agua.

# Safety: signs to stop at once.
stop-1 = Presión o dolor en el pecho, o falta de aire que no se pasa: llame al número de emergencias de su zona.
stop-2 = Mareo u hormigueo: respire como siempre. Si no se pasa en unos minutos, llame a su clínica.

# Levels, from easy to hard.
level-sitting-name = En una silla
level-sitting-change = Siéntese como quiera, con la espalda apoyada si lo prefiere.
