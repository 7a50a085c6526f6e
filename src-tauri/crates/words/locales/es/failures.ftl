## Lo que no se pudo hacer y qué hacer entonces.
## Cada fallo tiene dos mensajes: qué ocurre y (-advice) qué hacer. Los dos son frases enteras.

# Una tarjeta, como texto, código o archivo, que es otra cosa.
failure-card-foreign = Esto no es una tarjeta de plan de Carryover.
failure-card-foreign-advice = Use el código, el texto o el archivo que le dio su clínica.
failure-card-damaged = La tarjeta está dañada: una parte ha cambiado.
failure-card-damaged-advice = Escanéela o cópiela de nuevo. Si no funciona, pida otra tarjeta a su clínica.
failure-card-cut = La tarjeta está incompleta: le falta una parte.
failure-card-cut-advice = Escanee o copie de nuevo la tarjeta entera.
# $found, $known: versiones del formato de la tarjeta, números enteros.
failure-card-newer = La tarjeta es de la versión { $found }. Este programa lee tarjetas hasta la versión { $known }.
failure-card-newer-advice = Actualice el programa y añada la tarjeta de nuevo.
failure-card-too-big = Es demasiado grande para ser una tarjeta de plan.
failure-card-too-big-advice = Use el código, el texto o el archivo que le dio su clínica.
# Seguridad: alguien puede haber falsificado la tarjeta.
failure-card-other-clinic = La tarjeta se refiere a un plan que usted tiene de otra clínica, pero esa clínica no la firmó.
failure-card-other-clinic-advice = No use esta tarjeta. Pida una nueva a su clínica.
# $revision, $have: números de versión del plan.
failure-card-old = Esta tarjeta lleva la versión { $revision } del plan. Usted ya tiene la versión { $have }.
failure-card-old-advice = No tiene que hacer nada. Si esperaba una tarjeta más reciente, pregunte a su clínica.
# $problems: una o más frases enteras, de los mensajes problem-...
failure-card-refused = El plan de esta tarjeta no se puede usar aquí. { $problems }
failure-card-refused-advice = Actualice el programa o pida otra tarjeta a su clínica.
# $of (Number)
# $have (Number)
# $missing: números de códigos, como «2 y 3».
failure-card-part = Esta tarjeta se muestra en { $of } códigos; leídos: { $have }. Aún faltan: { $missing }.
failure-card-part-advice = Lea también los códigos que faltan, en cualquier orden.
failure-card-own-unfit = Esta tarjeta tiene un ejercicio propio de su clínica que este programa no puede leer.
failure-card-own-unfit-advice = Actualice el programa. Si no sirve, dígaselo a su clínica.
failure-no-code = En esta imagen no hay ningún código que se pueda leer.
failure-no-code-advice = Haga una foto nítida y de frente del código entero, o use el texto de la tarjeta.
failure-not-a-picture = Este archivo no es ni una imagen (PNG o JPEG) ni un archivo de tarjeta.
failure-not-a-picture-advice = Elija la imagen, el texto o el archivo de la tarjeta.
failure-picture-too-big = La imagen es demasiado grande. Se pueden leer imágenes de hasta { $most } megapíxeles.
failure-picture-too-big-advice = Haga la foto con el tamaño habitual de la cámara, no con el más grande.
failure-too-many-files = Son demasiados archivos a la vez. Se pueden recibir hasta { $most } de una vez.
failure-too-many-files-advice = Recíbalos por partes.
# $file: su nombre. $most: uno de los mensajes size-...
failure-file-too-big = { $file } supera el límite de { $most }.
failure-file-too-big-advice = Elija el archivo correcto.

failure-summary-foreign = Esto no es un resumen cifrado de Carryover.
failure-summary-foreign-advice = Pida al paciente el archivo que guardó Carryover.
failure-summary-damaged = El resumen está dañado o incompleto.
failure-summary-damaged-advice = Pida al paciente que lo guarde de nuevo.
failure-summary-other-clinic = El resumen está cifrado para otra clínica.
failure-summary-other-clinic-advice = Pida al paciente el resumen del plan de esta clínica; si la clínica renovó sus claves después de la copia de seguridad de esta carpeta de datos, use las claves que se guardaron desde entonces (carryover clinic passphrase --from-keys ARCHIVO).
failure-summary-unknown-plan = El resumen es de un plan que no está en los datos de esta clínica.
failure-summary-unknown-plan-advice = Compruebe que esta es la carpeta de datos en la que se emitió la tarjeta.
# Seguridad: alguien puede haber falsificado el resumen.
failure-summary-not-from-card = El resumen no viene de un dispositivo que tenga la tarjeta del plan.
failure-summary-not-from-card-advice = No lo use. Pida al paciente que guarde uno nuevo.
failure-summary-number-taken = Ya llegó de este dispositivo otro resumen con el mismo número. Ocurre cuando sus datos se recuperaron de una copia de seguridad.
failure-summary-number-taken-advice = Pida al paciente que guarde un resumen nuevo y reciba ese.
failure-summary-newer = El resumen es de la versión { $found }. Este programa lee resúmenes hasta la versión { $known }.
failure-summary-newer-advice = Actualice el programa y reciba el resumen de nuevo.

# $most: número entero.
failure-frames-too-many = El resumen es demasiado largo para mostrarlo en códigos. Los códigos pueden llevar hasta { $most } bytes cifrados.
failure-frames-too-many-advice = Elija menos días o guarde el resumen como archivo.
# $have, $of: números enteros; $missing: lista de números, "2 y 5".
failure-frames-missing = { $of ->
        [one] Se ha leído { $have } de { $of } código. Falta: { $missing }.
       *[other] Códigos leídos: { $have } de { $of }. Faltan: { $missing }.
    }
failure-frames-missing-advice = Haga una foto de cada código que falta y reciba todas juntas.
failure-frame-damaged = Un código de este resumen está dañado o no corresponde a los demás.
failure-frame-damaged-advice = Haga una foto nueva y nítida de cada código y reciba todas juntas.
failure-no-summary-code = En esta imagen no hay ningún código de un resumen que se pueda leer.
failure-no-summary-code-advice = Haga una foto nítida y de frente del código entero, o pida al paciente el archivo cifrado.

# $entry: un número.
failure-no-such-entry = No hay ninguna anotación { $entry } que se pueda corregir.
failure-no-such-entry-advice = Mire la lista de anotaciones que se pueden corregir y use un número de esa lista.
failure-correction-does-not-fit = Esta anotación no se puede corregir de ese modo.
failure-correction-does-not-fit-advice = Elimínela o ponga lo que le corresponde: un valor, una respuesta, un motivo o unos días.

failure-file-missing = No existe el archivo { $file }.
failure-file-missing-advice = Compruebe la ruta.
failure-file-unreadable = No se pudo leer { $file }.
failure-file-unreadable-advice = Compruebe que es el archivo o la carpeta que se pide y que tiene permiso de lectura.
failure-file-unwritable = No se pudo escribir { $file }.
failure-file-unwritable-advice = Elija una carpeta con permiso de escritura y espacio libre.
failure-folder-occupied = La carpeta { $folder } no está vacía.
failure-folder-occupied-advice = Indique una carpeta nueva o vacía.

# $home: ruta de la carpeta de datos.
failure-home-unnamed = Este sistema no indica ninguna carpeta para sus datos.
failure-home-unnamed-advice = Indique una con --home.
failure-home-missing = No hay ninguna carpeta de datos en { $home }.
failure-home-missing-advice = Compruebe la ruta, o inicie el programa una vez para crear la carpeta.
failure-home-read-only = No se pudo escribir en la carpeta de datos { $home }.
failure-home-read-only-advice = Obtenga permiso de escritura en ella o elija otra carpeta.
failure-home-full = No queda espacio para la carpeta de datos { $home }.
failure-home-full-advice = Libere espacio e inténtelo de nuevo. Lo guardado antes está a salvo.
failure-home-disk = No se pudo leer o escribir la carpeta de datos { $home }.
failure-home-disk-advice = Compruebe el disco y su cuota de disco e inténtelo de nuevo. Lo guardado antes está a salvo.
failure-home-open-to-others = Otras personas pueden leer o cambiar lo que hay en la carpeta { $home }.
failure-home-open-to-others-advice = Elija una carpeta vacía o una que solo pueda abrir usted.
failure-not-a-backup = { $file } no es una copia de seguridad de este programa, o está dañada.
failure-not-a-backup-advice = Elija otro archivo. No se ha cambiado nada.
failure-home-is-file = { $home } es un archivo, no una carpeta.
failure-home-is-file-advice = Elija una carpeta para los datos.
failure-home-newer = La carpeta de datos { $home } se creó con una versión más reciente de este programa.
failure-home-newer-advice = Actualice el programa. No se ha cambiado nada.
failure-home-in-use = Otra copia del programa tiene abierta { $home }.
failure-home-in-use-advice = Cierre antes la otra copia.
failure-home-damaged = La base de datos de { $home } está dañada.
failure-home-damaged-advice = No se ha cambiado nada. Puede recuperar su última copia de seguridad o salvar lo que se pueda leer; en un terminal, con carryover restore y carryover salvage.
failure-home-foreign = La base de datos de { $home } es de otro programa.
failure-home-foreign-advice = Elija otra carpeta.

# Perfil: hace ejercicios o los prescribe.
failure-other-role = Esta carpeta de datos es del otro perfil.
failure-other-role-advice = Indique con --home la carpeta del perfil correcto.
failure-only-sample = Esto es solo un ejemplo. No se guarda nada.
failure-only-sample-advice = Salga primero del ejemplo y luego añada la tarjeta de su plan.
failure-no-role = Esta carpeta de datos aún no tiene perfil.
failure-no-role-advice = Inicie el programa y elija si hace ejercicios o los prescribe.

failure-wrong-passphrase = La contraseña no es correcta.
failure-wrong-passphrase-advice = Inténtelo de nuevo. Una contraseña perdida no se puede recuperar.
failure-passphrase-missing = No se dio la contraseña y no hay terminal donde pedirla.
failure-passphrase-missing-advice = Escríbala en la primera línea de un archivo e indíquelo con --passphrase-file.
failure-weak-passphrase = { $least ->
        [one] La contraseña tiene menos de { $least } carácter.
       *[other] La contraseña tiene menos de { $least } caracteres.
    }
failure-weak-passphrase-advice = Elija una más larga, por ejemplo varias palabras.
failure-keys-damaged = Las claves de la clínica están dañadas.
failure-keys-damaged-advice = Recupere la carpeta de datos de su última copia de seguridad.
failure-clinic-not-started = Esta clínica aún no tiene claves.
failure-clinic-not-started-advice = Configure antes la clínica.
failure-clinic-started = Esta clínica ya tiene sus claves.
failure-clinic-started-advice = Ábrala con su contraseña.
# Al configurar la clínica. $most: número entero.
failure-clinic-name-length = { $most ->
        [one] El nombre de la clínica está vacío o tiene más de { $most } carácter.
       *[other] El nombre de la clínica está vacío o tiene más de { $most } caracteres.
    }
failure-clinic-name-length-advice = Escriba un nombre de esa longitud.
failure-phone-unfit = { $most ->
       [one] Un número de teléfono tiene al menos tres cifras y como mucho { $most } carácter: cifras, espacios y + - ( ) . /
      *[other] Un número de teléfono tiene al menos tres cifras y como mucho { $most } caracteres: cifras, espacios y + - ( ) . /
    }
failure-phone-unfit-advice = Escriba el número como lo marcaría un paciente, o déjelo vacío.
failure-clinic-name-unprintable = El nombre de la clínica tiene un carácter que no se puede mostrar, como un salto de línea.
failure-clinic-name-unprintable-advice = Escriba el nombre como texto sencillo en una sola línea.
failure-clinic-locked = Los datos de la clínica están bloqueados.
failure-clinic-locked-advice = Escriba la contraseña.
failure-screen-locked = Carryover está bloqueado.
failure-screen-locked-advice = Escriba su código.
failure-screen-code-wrong = Ese no es su código.
failure-screen-code-wrong-advice = Escríbalo otra vez. No se ha cambiado nada.
# $least (Number)
failure-screen-code-short = Un código necesita { $least } caracteres o más.
failure-screen-code-short-advice = Elija uno más largo.
failure-no-such-patient = No hay ningún paciente con el código { $code }.
failure-no-such-patient-advice = Compruebe el código o añada al paciente.
failure-clinician-name-missing = Hace falta el nombre del profesional, porque cada uno tiene su propia contraseña.
failure-clinician-name-missing-advice = Indique el nombre (en el terminal con --clinician NOMBRE).
failure-no-such-clinician = Ningún profesional se llama { $name }.
failure-no-such-clinician-advice = Escriba el nombre como se añadió.
failure-clinician-name-taken = Ya hay un profesional llamado { $name }.
failure-clinician-name-taken-advice = Elija otro nombre.
failure-too-many-clinicians = Ya hay { $most } profesionales.
failure-too-many-clinicians-advice = Quite primero a uno.
failure-last-clinician = Solo hay un profesional.
failure-last-clinician-advice = Añada primero a otro.
failure-clinician-is-you = Nadie puede quitarse a sí mismo.
failure-clinician-is-you-advice = Puede hacerlo otro profesional.
failure-case-closed = El caso de { $code } está cerrado.
failure-case-closed-advice = Ábralo de nuevo primero.
failure-case-open = El caso de { $code } está abierto.
failure-case-open-advice = No se ha cambiado nada.
failure-case-words-missing = Con «otro» hay que decir con palabras por qué se cierra el caso.
failure-case-words-missing-advice = Añada unas palabras.
failure-case-closed-too-often = El caso ya se ha cerrado { $most } veces.
failure-case-closed-too-often-advice = Añada al paciente de nuevo con otro código.
failure-code-taken = El código { $code } ya está en uso.
failure-code-taken-advice = Elija otro código.
failure-code-bad = Un código tiene de 1 a 12 letras, cifras o guiones.
failure-code-bad-advice = Elija otro código.
# $problems: una o más frases enteras, de los mensajes problem-...
failure-plan-refused = { $problems }
failure-plan-refused-advice = Cambie el plan y luego emita la tarjeta.
failure-plan-too-large = Los ejercicios propios de este plan son demasiado grandes en conjunto para una tarjeta.
failure-plan-too-large-advice = Quite uno de ellos o acorte sus textos.
failure-no-such-own = No tiene ningún ejercicio propio llamado { $name }.
failure-no-such-own-advice = Mire la lista de sus ejercicios propios y use un nombre de ella.
# $most (Number)
failure-too-many-own = Tiene { $most } ejercicios propios o sin terminar; no caben más.
failure-too-many-own-advice = Quite uno que ya no prescriba e inténtelo de nuevo.
failure-no-such-set = No tiene ningún conjunto llamado { $name }.
failure-no-such-set-advice = Mire la lista de sus conjuntos y use un nombre de ella.
# $most (Number)
failure-set-name-unfit = El nombre de un conjunto tiene de 1 a { $most } caracteres, todos visibles.
failure-set-name-unfit-advice = Elija otro nombre.
failure-set-refused = { $problems }
failure-set-refused-advice = Cambie el archivo del plan y luego guarde el conjunto.
# $most (Number)
failure-too-many-sets = Tiene { $most } conjuntos; no caben más.
failure-too-many-sets-advice = Quite uno que ya no use e inténtelo de nuevo.

# $most (Number): caracteres.
failure-visit-text = Este texto tiene de 1 a { $most } caracteres si no puede quedar vacío, y como mucho { $most } en los demás casos, todos visibles.
# $least (Number), $most (Number)
failure-visit-value = Este número va de { $least } a { $most }; el dolor y los recuentos son números enteros.
failure-visit-trials = Una medida tiene de uno a tres resultados.
failure-visit-side = Falta el lado, o no es uno posible.
failure-visit-unfit-advice = Corríjalo y anótelo otra vez. No se guardó nada.
failure-visit-changed = Lo que quería corregir cambió entretanto o no existe.
failure-visit-changed-advice = Vuelva a mirar la visita y corríjalo después.
failure-visit-not-screened = No hay ningún cribado anterior que se pueda repetir.
failure-visit-not-screened-advice = Pregunte por cada condición y anote lo que haya.
# $most (Number)
failure-too-many-findings = Las visitas de este paciente ya tienen { $most } entradas y no caben más.
failure-too-many-findings-advice = Exporte la revisión para sus archivos y empiece un código de paciente nuevo.

# $revision (Number)
failure-card-not-saved = El plan { $revision } para { $code } se ha emitido, pero no se pudo guardar su tarjeta en { $folder }.
failure-card-not-saved-advice = Haga sitio o elija otra carpeta y vuelva a mostrar la tarjeta desde el seguimiento del paciente, o ejecute carryover clinic card. No hace falta emitir el plan otra vez.
failure-diary-day = El { $date } no es un día del plan hasta ahora.
failure-diary-day-advice = Introduzca días desde el primero del plan hasta hoy.
# $most (Number)
failure-diary-number = El { $date } nombra algo que nunca estuvo en el plan, o más de { $most } sesiones.
failure-diary-number-advice = Corrija ese día e introdúzcalo de nuevo. No se guardó nada.
failure-no-card-issued = Todavía no se ha emitido ningún plan para { $code }.
failure-no-card-issued-advice = Emita primero un plan.
failure-nothing-to-export = Todavía no hay ningún plan ni ninguna visita, así que no hay nada que exportar.
failure-nothing-to-export-advice = Emita primero un plan o anote una visita.
# $revision (Number)
failure-no-such-revision = { $code } no tiene ningún plan { $revision }.
failure-no-such-revision-advice = Compruebe el número del plan, u omítalo para el más reciente.
failure-record-damaged = Los datos de { $code } están dañados.
failure-record-damaged-advice = Restaure una copia de seguridad de los datos de la clínica. Los datos de los demás pacientes se pueden seguir usando.
failure-records-damaged = { $n ->
        [one] No se ha encontrado, pero los datos de { $n } paciente están dañados y puede que esté ahí.
       *[other] No se ha encontrado, pero los datos de { $n } pacientes están dañados y puede que esté en alguno de ellos.
    }
failure-removal-not-confirmed = Esto eliminaría a { $code } definitivamente: el nombre, todos los planes y todos los resúmenes, también de las copias automáticas.
failure-removal-not-confirmed-advice = Escriba el código del paciente para confirmarlo, o añada --yes. Con --keep-backups las copias se quedan como están.
# $device: the name of a device, 16 characters.
failure-no-such-device = Ningún resumen de { $code } procede de un dispositivo { $device }.
failure-no-such-device-advice = Mire la lista de dispositivos y use un nombre de ella.
# Safety: somebody else may use the clinic's name.
failure-clinic-name-known = Esta tarjeta lleva el nombre de { $clinic }, pero no está firmada con la clave de la tarjeta que usted ya tiene de { $clinic }. Su código de seguridad es { $fingerprint }.
failure-clinic-name-known-advice = Pregunte a su clínica si este es su código de seguridad. Solo si lo es, añada --yes.

failure-no-plan = Aún no hay ningún plan.
failure-no-plan-advice = Añada la tarjeta que le dio su clínica.
failure-which-plan = Usted tiene más de un plan.
failure-which-plan-advice = Indique el plan con --plan.
failure-no-such-item = Este ejercicio no está en el plan.
failure-no-such-item-advice = Mire el plan de nuevo. Es posible que se haya sustituido.
failure-no-such-session = El plan no tiene ninguna sesión a esta hora.
failure-no-such-session-advice = Mire el día de nuevo. Es posible que el plan se haya sustituido.
# Seguridad: el paciente indicó un problema y el ejercicio no debe continuar.
failure-paused = Este ejercicio está suspendido por seguridad porque usted indicó un problema.
failure-paused-advice = Llame a su clínica. Solo una tarjeta nueva de su clínica puede reanudar el ejercicio.
failure-empty-period = En este periodo no hay ningún día del plan.
failure-empty-period-advice = Elija un periodo entre el inicio del plan y hoy.
# $least, $most: números enteros.
failure-out-of-range = El número debe estar entre { $least } y { $most }.
failure-out-of-range-advice = Elija un número de ese intervalo.
# Horas sin recordatorios.
failure-no-reminder-hours-wrong = Las horas sin recordatorios necesitan un principio y un final distintos, como 12:00-13:00. Puede tener hasta { $most }.
failure-no-reminder-hours-wrong-advice = Corríjalas. Mientras tanto valen las anteriores.
failure-nothing-due = No hay ninguna sesión prevista desde ahora hasta la fecha de la próxima visita.
failure-nothing-due-advice = Añada una tarjeta nueva, o mire en la página Plan qué está suspendido por seguridad.
failure-not-confirmed = Esto borraría para siempre lo que hay en { $home }: los planes, todo lo que registró, los ajustes y el vínculo con su clínica. Los archivos que guardó por su cuenta no se borran.
failure-not-confirmed-advice = Exporte lo que quiera conservar y después añada --yes.
# $detail: lo que dijo el sistema, en su idioma.
failure-at-login-refused = El sistema no permitió este cambio: { $detail }
failure-at-login-refused-advice = Mire en los ajustes del sistema qué programas se abren al iniciar sesión.
failure-text-not-allowed = { $most ->
        [one] El texto tiene más de { $most } carácter, o tiene un carácter que no se puede mostrar.
       *[other] El texto tiene más de { $most } caracteres, o tiene un carácter que no se puede mostrar.
    }
failure-text-not-allowed-advice = Acórtelo y escríbalo en una sola línea.
# Un archivo que escribió una persona. $file: su nombre. $fault: uno de los mensajes file-fault-... de file-faults.ftl; no lleva punto final.
failure-not-understood = No se entiende { $file }: { $fault }.
failure-not-understood-advice = Corríjalo e inténtelo de nuevo.
# Lo mismo cuando se conoce la línea. $line: número desde 1.
failure-not-understood-line = { $file }, línea { $line }: { $fault }.
failure-not-understood-line-advice = Corrija el archivo.
# $detail: técnico, para el informe, siempre en inglés.
failure-internal = El programa tiene un fallo: { $detail }.
failure-internal-advice = Inícielo de nuevo. Lo guardado está a salvo. Si vuelve a ocurrir, comuníquelo.

## Lo que impide emitir o usar un plan. Frases enteras; $item es el número del ejercicio en el plan.
## (Donde el nombre del ejercicio está al lado, clinic.ftl tiene una forma corta: problem-dose, problem-side ...)

problem-no-item = El plan no tiene ejercicios.
problem-too-many = El plan tiene más entradas de las que caben.
problem-text-clinic = El nombre de la clínica está vacío o tiene más de { $most } caracteres.
problem-text-phone = El teléfono de la clínica necesita al menos tres cifras y como mucho { $most } caracteres: cifras, espacios y + - ( ) . /
problem-text-complaint = El nombre de una molestia está vacío o tiene más de { $most } caracteres.
problem-text-activity = El nombre de una actividad está vacío o tiene más de { $most } caracteres.
problem-text-note = La nota de un ejercicio está vacía o tiene más de { $most } caracteres.
problem-text-aftercare = Una indicación para los dos primeros días está vacía o tiene más de { $most } caracteres.
problem-same-number = Dos entradas del plan tienen el mismo número.
problem-review-date = La fecha de la próxima visita debe ser posterior a hoy y antes de un año.
# $id: nombre del ejercicio en el catálogo, un identificador en inglés como wall-sit.
problem-unknown-exercise = El ejercicio «{ $id }» no está en el catálogo de este programa.
problem-other-content = Este programa tiene otra versión del ejercicio «{ $id }».
problem-level-missing = Al ejercicio { $item } le falta el nivel.
# $rung: identificador del nivel en el catálogo.
problem-unknown-level = El nivel «{ $rung }» no está en el catálogo de este programa.
problem-dose-of = La dosis del ejercicio { $item } está fuera de los límites.
problem-too-much-work-of = El ejercicio { $item } pide más de { $minutes } minutos por lado cada vez.
problem-side-of = El lado del ejercicio { $item } no le corresponde.
problem-schedule-of = Las horas del ejercicio { $item } faltan o están fuera de los límites.
problem-load-of = El ejercicio { $item } tiene una carga o un esfuerzo que un ejercicio de su tipo no puede tener.
problem-phase-of = El primer y el último día del ejercicio { $item } deben estar dentro del plan, y el último no antes que el primero.
problem-overlap-of = El ejercicio { $item } es el mismo que el ejercicio { $other }, del mismo lado y en algunos de los mismos días: haga que uno empiece cuando el otro haya terminado.
problem-once-a-day-of = El ejercicio { $item } se hace una vez los días que elige el paciente: necesita una sola hora, a partir de las 3:00.
problem-complaint-gone-of = El ejercicio { $item } es para una molestia que no está en el plan.
problem-age-missing = Los ejercicios de equilibrio en casa necesitan el grupo de edad del paciente.
# $risks: varios de los mensajes risk-..., unidos con "; ".
problem-not-ticked = Los ejercicios de equilibrio en casa son solo para pacientes que no tienen nada de esto. Marque cada punto que haya descartado: { $risks }.
problem-not-confirmed = La lista de lo que el paciente no tiene se confirmó por última vez el { $day }. Confirme que hoy sigue siendo cierta.
problem-no-stance-baseline = El ejercicio { $item } necesita el tiempo de hoy sobre una pierna, con ojos abiertos y en suelo firme, de cada lado prescrito.
# Seguridad: no se permite el equilibrio en casa.
problem-stance-too-short = Ejercicio { $item }: el paciente aguanta menos de 5 segundos sobre una pierna con ojos abiertos, así que no debe practicar el equilibrio sin supervisión.
problem-gate-closed = Ejercicio { $item }: no se permiten superficies más blandas ni ojos cerrados hasta lograr 30 s con ojos abiertos en suelo firme, hoy y en una visita anterior.
problem-soft-and-closed = Ejercicio { $item }: a partir de los 65 años no se permite practicar sin supervisión en una superficie blanda con los ojos cerrados.

## Lo que debe estar ausente antes de practicar el equilibrio en casa; se marca lo que el paciente NO tiene.

risk-high-fall-risk = una caída con lesión, dos o más caídas en un año, fragilidad, una hora o más en el suelo tras caer o pérdida de conciencia
risk-vertigo-or-fainting = vértigo, crisis vestibular o síncope en estudio
risk-numb-feet = neuropatía o pérdida de sensibilidad en los pies
risk-neurological-unsteadiness = inestabilidad por enfermedad de Parkinson o por un ictus (ACV)
risk-partial-weight-bearing = una ortesis o carga parcial
risk-fresh-injury = una fractura, operación o rotura de ligamento reciente
risk-severe-osteoporosis = osteoporosis grave
risk-sedatives-or-alcohol = sedantes o alcohol
risk-severe-visual-loss = pérdida grave de visión (para ojos cerrados)
risk-cognitive-impairment = deterioro cognitivo
risk-late-pregnancy = embarazo avanzado

failure-plan-card-not-summary = Esto es una tarjeta de plan, no un resumen.
failure-plan-card-not-summary-advice = La tarjeta es para que la escanee el paciente. Elija el archivo cifrado que guardó el paciente, o una foto de sus códigos.
failure-report-of-one = Un informe trata de un solo paciente y es un archivo.
failure-report-of-one-advice = Indique el código del paciente, y el archivo con --out.
failure-server-not-set = No hay ningún servidor configurado al que entregar las revisiones.
failure-server-not-set-advice = Indique su dirección con «clinic server».
failure-server-elsewhere = La dirección del servidor tiene que estar en este ordenador, por ejemplo http://127.0.0.1:8080/fhir.
failure-server-elsewhere-advice = Escriba 127.0.0.1, [::1] o localhost, el puerto y la ruta. Para un servidor en otro lugar, guarde la revisión como archivo.
failure-server-token = La clave de acceso tiene signos que ninguna puede tener, o es demasiado larga.
failure-server-token-advice = Cópiela otra vez del servidor, en una línea, en un archivo que solo usted pueda leer.
failure-server-down = Ningún servidor responde en la dirección de este ordenador.
failure-server-down-advice = Inícielo o compruebe la dirección, y vuelva a entregar.
failure-server-slow = { $seconds ->
        [one] El servidor no respondió en { $seconds } segundo.
       *[other] El servidor no respondió en { $seconds } segundos.
    }
failure-server-slow-advice = Vuelva a entregar más tarde. Lo que el servidor ya tenga se sustituye, no se duplica.
failure-server-sends-on = El servidor remite a otra dirección, que no se sigue.
failure-server-sends-on-advice = Indique la dirección en la que el propio servidor recibe historias.
failure-server-not-let-in = El servidor no deja entrar a esta clínica ({ $status }).
failure-server-not-let-in-advice = Indique la clave de acceso que espera el servidor.
failure-server-refused = El servidor no aceptó { $code } ({ $status }).
failure-server-refused-saying = El servidor no aceptó { $code } ({ $status }). Dice: { $said }
failure-server-refused-advice = Enséñeselo a quien se ocupa del servidor.
failure-server-failed = El servidor falló ({ $status }).
failure-server-failed-advice = Vuelva a entregar más tarde. Lo que el servidor ya tenga se sustituye, no se duplica.
failure-server-not-understood = Lo que respondió el servidor no es una respuesta a lo enviado, así que no se sabe si lo aceptó.
failure-server-not-understood-advice = Compruebe que la dirección es la de un servidor de HL7 FHIR R4 y vuelva a entregar: nada se duplica.
