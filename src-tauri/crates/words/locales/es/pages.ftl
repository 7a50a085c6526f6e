## Primer inicio: para qué sirve el programa, antes de elegir el perfil; también al principio de la ayuda

welcome-title = Para qué sirve Carryover
welcome-what = Carryover le ayuda a hacer los ejercicios que le prescribió su clínica: le avisa, le guía y anota cómo fue.
welcome-for = Es para quienes hacen en casa o en el trabajo los ejercicios prescritos entre dos visitas, y para los profesionales que los prescriben.
# Seguridad.
welcome-not-device = Carryover no es un producto sanitario ni un dispositivo médico. No hace diagnósticos y no sustituye lo que le indique su clínica.
# Seguridad.
welcome-not-emergency = No sirve para emergencias. En una emergencia, llame al número de emergencias de su zona. Nadie lee lo que usted anota antes de la visita.
welcome-young = Si tiene menos de 18 años, use Carryover junto con su madre, su padre u otra persona adulta que le cuide.
welcome-carer = Si cuida a otra persona, usen Carryover juntos. Las respuestas sobre el dolor y el esfuerzo deben ser de esa persona.
welcome-understood = Lo entiendo: continuar
# Primer inicio de quien prescribe.
welcome-clinic = Carryover no es un producto sanitario ni un dispositivo médico. Sus propuestas siguen reglas fijas y quien decide es usted. Las normas locales y su propio criterio tienen prioridad.
welcome-clinic-reading = A los pacientes se les dice que nadie lee sus anotaciones antes de la visita. No use Carryover para vigilar a un paciente.

## Privacidad: una página

privacy-title = Privacidad
privacy-no-server = No hay cuenta ni servidor. Nada sale de este dispositivo si usted no lo guarda o lo muestra.
privacy-stored = Este dispositivo guarda sus planes, lo que hizo y cuándo, sus respuestas sobre el dolor y las actividades, los problemas que indicó y sus ajustes.
privacy-in-the-clear = En este dispositivo, Carryover no cifra su historial. Cualquiera que pueda desbloquear o administrar el dispositivo puede leerlo. Proteja el dispositivo con un bloqueo.
privacy-summary = Un resumen está cifrado. Solo su clínica puede abrirlo. Los datos exportados no están cifrados.
privacy-card = Cualquiera que tenga la tarjeta de su plan puede leer el plan y hacer resúmenes en su nombre.
privacy-notifications = Los recordatorios no dicen nada médico, pero quien vea su pantalla puede leerlos.
privacy-lost = Si pierde el dispositivo, pierde el historial que contiene, salvo que tenga una copia de seguridad en otro lugar. Avise a su clínica y pida una tarjeta nueva.
# What leaves this device. The button, what is shown, and its figures.
privacy-bytes-title = Qué sale de este dispositivo
privacy-bytes-what = Solo sale un resumen, y solo cuando usted lo guarda o muestra sus códigos. Este es el resumen que se haría ahora: cada byte y lo que significa.
privacy-bytes-plan = Resumen para { $clinic }
bytes-show = Mostrar cada byte
bytes-hide = Ocultar los bytes
# $plain, $packed: numbers of bytes.
# $plain (Number), $packed (Number)
bytes-sizes = { $plain } bytes, { $packed } una vez comprimidos. Después se cifran con la clave de su clínica: por el camino, los demás solo ven el tamaño y que es un archivo cifrado.
bytes-around = Alrededor van el tipo de archivo, de nuevo los números de plan, registro y resumen, y una prueba de que quien lo envía tiene su tarjeta.
# $n: number of bytes.
# $n (Number)
bytes-count = { $n ->
        [one] { $n } byte
       *[other] { $n } bytes
    }
part-plan = Número aleatorio de su plan
part-log = Número aleatorio del registro de este dispositivo
part-counter = Número de este resumen
part-from = Primer día, contado desde el inicio del plan
part-until = Último día, contado desde el inicio del plan
part-taken = Tarjetas que añadió: día, número y horas acordadas
part-seen = Días en los que abrió Carryover
part-days = Cada sesión por su día y su lugar en el día: hecha, hecha a otra hora, omitida y por qué, o no hecha
part-runs = Cada ejercicio hecho: día, hora, lado, nivel, segundos o repeticiones, y cómo terminó
part-settled = Si el dolor se había calmado a la mañana siguiente
part-rated = Sus valoraciones de actividades cotidianas
part-alarms = Lo que dijo que iba mal: día, ejercicio y sus respuestas
part-delays = Cuánto después del aviso solía empezar, por semana
part-note = Su nota
part-corrections = Lo que corrigió después
part-mornings = Sus valoraciones del dolor por la mañana
part-during = Sus valoraciones del dolor durante los ejercicios
part-well-again = Cuándo dijo que ya está bien
part-former = Números anteriores de este registro, de antes de moverlo o recuperarlo
privacy-how-long = Su historial se queda en este dispositivo hasta que usted lo borre. Lo que su clínica ya ha recibido se conserva allí según sus propias normas.
privacy-young-and-carers = Si otra persona usa o administra este dispositivo por usted, puede leer su historial.
# La misma página para quien prescribe.
privacy-clinic-stored = Los pacientes, lo que usted marca de ellos, los planes y los resúmenes se guardan en este equipo, cifrados con su contraseña.
privacy-clinic-card-files = Los archivos de tarjeta que guarde no están cifrados. Elimínelos cuando el paciente tenga la tarjeta.
privacy-clinic-server = Si configura un servidor de historias clínicas, las revisiones que usted entregue van a él sin cifrar, solo dentro de este ordenador. No se hace ninguna otra conexión. Al principio no hay nada configurado.
privacy-clinic-lost = Si pierde este equipo, pierde los datos de la clínica, salvo que tenga una copia de seguridad de la carpeta de datos. Si pierde la contraseña, los pierde salvo que haya guardado las claves. Guarde las tres cosas por separado.
privacy-clinic-how-long = Los datos se quedan en la carpeta de datos hasta que los borre. Las normas locales indican cuánto tiempo debe conservarlos.

## Ayuda: una página, pregunta a pregunta

help-title = Ayuda
help-ask-where = ¿Dónde encuentro cada cosa?
help-now = Ahora muestra qué toca hacer. Plan muestra todo lo que le prescribió su clínica. Historial muestra qué hizo y cómo fue.
help-ask-wrong = ¿Qué hago si me pasa algo?
help-wrong = Si le pasa algo, toque «Tengo un problema». En una emergencia, llame antes al número de emergencias de su zona.
help-ask-missed = ¿Y si me salté una sesión?
help-missed = Si se saltó una sesión, haga la siguiente como estaba previsto. No haga más de una vez para compensar.
help-ask-soreness = ¿Es normal que me duelan los músculos?
soreness-usual = Es normal tener los músculos algo doloridos uno o dos días después de ejercicios nuevos o más difíciles.
soreness-too-much = Si el dolor muscular es fuerte, dura más de tres días o aparece con hinchazón, no siga y llame a su clínica. Si la orina es oscura, busque atención médica hoy mismo.
help-ask-no-reminder = ¿Por qué no llega ningún recordatorio?
help-ask-two-devices = ¿Puedo usar dos dispositivos?
help-two-devices = Puede usar la misma tarjeta en dos dispositivos. Guarde un resumen en cada uno para la visita.
help-ask-new-device = ¿Y si cambio de dispositivo?
help-new-device = Guarde una copia de seguridad en el dispositivo anterior y recupérela en el nuevo: allí sigue todo. Después, deje de usar el anterior. Sin el anterior necesita una tarjeta nueva de su clínica, y se pierde lo que registró desde la última visita.
help-ask-stop = ¿Puedo parar en mitad de un ejercicio?
help-stop = Puede dejar cualquier ejercicio en cualquier momento.
help-ask-card = ¿Cómo recibe un paciente su plan?
help-card = Añada al paciente con un código, ponga ejercicios en el plan y emita la tarjeta. El paciente la escanea, o abre su imagen, su texto o su archivo.
help-ask-done = ¿Cómo veo qué se hizo?
help-done = En la visita, el paciente guarda un resumen cifrado o lo muestra en códigos. Elija el archivo, o las fotos de los códigos, en «Recibir resúmenes». Después abra la revisión.
help-ask-alone = ¿Cambia el plan mientras el paciente está en casa?
help-alone = Solo lo cambia una tarjeta nueva. En los ejercicios en que usted lo permita, el paciente puede dar el siguiente paso por su cuenta.
help-ask-alarm = ¿Cómo se reanuda un ejercicio después de una alarma?
help-alarm = Cuando lo hayan hablado, marque la alarma en el plan siguiente y emita la tarjeta. Hasta que el paciente tenga esa tarjeta, lo que la alarma suspendió sigue suspendido.
help-ask-draft = ¿Y si dejo un plan antes de emitir la tarjeta?
help-draft = Queda guardado y cifrado como borrador. Abra el plan de nuevo para seguir.

## Versión y licencias: una página

about-title = Acerca de Carryover
# $version: como 0.4.0.
about-version = Versión { $version }
about-data-folder = Carpeta de datos: { $folder }
licences-title = Licencias
licences-program = Carryover es software libre bajo la licencia MIT o la licencia Apache 2.0, a su elección.
licences-typeface = El tipo de letra Atkinson Hyperlegible Next está bajo la SIL Open Font License 1.1.
licences-codes = Los archivos para historias clínicas contienen códigos de LOINC y SNOMED CT, cuyos titulares piden un aviso.
licences-show-notices = Mostrar los avisos
licences-libraries = Carryover usa estas bibliotecas:
licences-show = Mostrar la lista

## Página de fallo: se muestra cuando el programa de la ventana se ha parado. La construcción del programa la pone en index.html en cada idioma, porque entonces el programa ya no puede mostrarla

crash-title = Esta ventana ha dejado de funcionar
# Seguridad: primero la persona, después el programa.
crash-what = Si está haciendo un ejercicio, pare y descanse primero. Todo lo registrado hasta ahora está guardado. Después abra Carryover de nuevo.
crash-open-again = Abrir de nuevo
crash-details = Para un informe:
# $address: de un archivo del programa.
crash-could-not-load = no se pudo cargar { $address }
# $rule: la regla de seguridad de la página, en inglés.
crash-refused = bloqueado por { $rule }: { $address }
