## La contraseña de la clínica, su bloqueo y sus claves guardadas

lock = Bloquear
lock-hint = Ctrl+L
keys-title = Contraseña y claves
idle-choice = Bloquear si nadie usa el programa durante
idle-minutes = { $n ->
        [one] { $n } minuto
       *[other] { $n } minutos
    }
idle-what = También se bloquea cuando el equipo sale de la suspensión. Un plan que estuviera editando se conserva, cifrado.

strength-too-short = Demasiado corta
strength-guessable = Fácil de adivinar
strength-good = Buena
strength-strong = Muy buena
strength-advice = Cuatro o más palabras que no tengan nada que ver entre sí son difíciles de adivinar. Los nombres, las fechas, las repeticiones y las teclas vecinas no lo son.

passphrase-change = Cambiar la contraseña
passphrase-old = Contraseña actual
passphrase-new = Contraseña nueva
passphrase-changed = La contraseña se ha cambiado.
passphrase-older-copies = Las copias de seguridad y las claves guardadas de antes se siguen abriendo con la contraseña anterior. Destrúyalas si alguien puede conocerla.

saved-keys-title = Guardar las claves
saved-keys-what = Con las claves guardadas se puede preparar esta clínica en un equipo nuevo y sustituir una contraseña olvidada. No contienen datos de pacientes, así que tenga también una copia de seguridad de la carpeta de datos.
saved-keys-passphrase = Contraseña para las claves guardadas
saved-keys-passphrase-hint = Puede ser distinta de la contraseña de la clínica. La necesitará para usar las claves guardadas.
saved-keys-save = Guardar las claves
saved-keys-saved = Guardado: el archivo de claves y una hoja para imprimir.
saved-keys-keep = Guárdelos lejos de este equipo y separados de su contraseña.

renew-keys-title = Renovar las claves
renew-keys-what = Por ejemplo, porque alguien puede haber copiado las claves, o tan a menudo como lo pidan sus normas. A partir de entonces las tarjetas nuevas se firman y los resúmenes se cifran con claves nuevas. Los planes continúan, y los resúmenes hechos con tarjetas anteriores se siguen abriendo. El código de verificación de esta clínica cambia: será otro en todas las tarjetas nuevas.
renew-keys-not = No le quita nada a quien tenga una copia de las claves anteriores. Podrá seguir abriendo los resúmenes hechos con tarjetas anteriores y emitiendo tarjetas en nombre de esta clínica para planes ya empezados. Dé una tarjeta nueva a cada paciente. Si es posible que hayan robado las claves, cambie también la contraseña y empiece un plan nuevo para cada paciente, con un código nuevo.
renew-keys-passphrase = La contraseña de la clínica, para renovar las claves
renew-keys-understood = Daré tarjetas nuevas y guardaré las claves otra vez
renew-keys-renew = Renovar las claves
renew-keys-done = Las claves se han renovado.
renew-keys-save = Guarde las claves otra vez: lo que se guardó antes no contiene las nuevas.
renew-keys-code = Nuevo código de verificación: { $code }

identity-title = Clave secreta para otros programas
identity-what = Con ella, cualquier programa para el formato age puede abrir los resúmenes de esta clínica. Si las claves se han renovado, hay una para cada época.
identity-show = Mostrar la clave secreta
identity-hide = Ocultar
confirm-passphrase = Escriba la contraseña de la clínica para confirmar.
identity-masked = No se muestra. Añada --show para imprimirla.

set-up-saved = Tengo las claves guardadas de esta clínica
set-up-saved-what = Elija el archivo de claves o una foto del código de la hoja impresa. Su contraseña será aquí la contraseña de la clínica.
set-up-saved-file = Archivo de claves o foto
set-up-saved-chosen = Elegido: { $file }

## Los archivos de una tarjeta emitida

card-files-clear = Estos archivos no están cifrados. Quien tenga uno puede leer el plan y usar la tarjeta. Elimínelos cuando el paciente tenga la tarjeta.
card-files-more = Guardar también como SVG, texto y archivo
card-files-remove = Eliminar estos archivos
card-files-removed = Los archivos se han eliminado. La tarjeta sigue emitida.
card-copied-readable = Copiado. Otros programas pueden leerlo; se borra al salir de esta página.

## La hoja impresa con las claves guardadas

key-sheet-title = Claves guardadas de { $clinic }
key-sheet-made = Hecha el { $day }
key-sheet-what = El código contiene las claves de esta clínica, cifradas con la contraseña que se eligió para ellas. Sin esa contraseña no sirve de nada.
key-sheet-restore = En un equipo nuevo, prepare la clínica con «Tengo las claves guardadas de esta clínica» y elija el archivo de claves o una foto de este código. Cualquier programa para el formato age puede descifrar el texto que está debajo del código.
key-sheet-keep = Guarde esta hoja bajo llave, y la contraseña en otro lugar.
key-sheet-data = Las claves no contienen datos de pacientes. Los pacientes, los planes y los resúmenes están en la carpeta de datos, de la que necesita una copia de seguridad.
key-sheet-later = Si la clínica renueva sus claves después del día indicado arriba, esta hoja no contiene las nuevas. En ese caso guárdelas otra vez y conserve las dos hojas.
key-sheet-plain = Esta clave secreta no está cifrada. Quien la lea o la fotografíe puede abrir todos los resúmenes hechos para esta clínica. Guárdela bajo llave.
key-sheet-plain-not = Abre los resúmenes con cualquier programa para el formato age. No abre los pacientes ni los planes de la clínica, y con ella no se puede preparar la clínica.
key-sheet-plain-keep = Si otra persona la ha visto, los resúmenes de esta clínica ya no son secretos.
key-sheet-plain-former = Las claves se han renovado. La línea que está encima de cada clave secreta indica los días de las tarjetas cuyos resúmenes abre.

## Terminal

new-passphrase-prompt = Contraseña nueva:
new-passphrase-again-prompt = Repita la contraseña nueva:
name-prompt = Nombre (vacío si no quiere ninguno):

## Ayuda

help-ask-lost = ¿Y si se pierden las claves o la contraseña?
help-lost-passphrase = Contraseña perdida, claves guardadas: no se pierde nada. Las claves guardadas sustituyen la contraseña: carryover clinic passphrase --from-keys ARCHIVO.
help-lost-computer = Equipo perdido, claves guardadas: ponga la copia de seguridad de la carpeta de datos en un equipo nuevo; se abre con su contraseña o, si no, con las claves guardadas. Sin copia, prepare la clínica con las claves guardadas: aquí se pierden los pacientes y los planes, y cada paciente necesita una tarjeta nueva. Un programa para el formato age sigue abriendo cualquier resumen con la clave secreta.
help-lost-both = Contraseña perdida y claves sin guardar: nadie puede abrir lo que hay aquí, ni siquiera quienes hacen este programa. Prepare la clínica de nuevo. Los pacientes necesitan tarjetas nuevas, y lo que ya habían entregado se pierde. Lo registrado en sus dispositivos sigue allí.
help-lost-stolen = Claves en malas manos: cambie la contraseña, renueve las claves en «Contraseña y claves», guárdelas otra vez y destruya las copias y las claves guardadas anteriores. Quien tenga las claves anteriores y su contraseña puede seguir leyendo los resúmenes hechos con tarjetas anteriores y emitiendo tarjetas en nombre de esta clínica para planes ya empezados. Por eso, empiece un plan nuevo para cada paciente, con un código nuevo.
help-lost-renewed = Claves guardadas antes de renovarlas: abren los pacientes y los planes, pero no los resúmenes hechos con tarjetas más nuevas, y no pueden continuar planes que tengan una de esas tarjetas. Use las claves que se guardaron por última vez: carryover clinic passphrase --from-keys ARCHIVO.

## Negativas

failure-guessable-passphrase = La contraseña es fácil de adivinar.
failure-guessable-passphrase-advice = Elija cuatro o más palabras que no tengan nada que ver entre sí, sin nombres ni fechas.
failure-file-exposed = Otros usuarios de este equipo pueden leer { $file }, que contiene un secreto.
failure-file-exposed-advice = Permita leerlo solo a usted (chmod 600) e inténtelo de nuevo.
failure-not-saved-keys = Esto no contiene las claves guardadas de una clínica.
failure-not-saved-keys-advice = Elija el archivo de claves, su texto o una foto nítida del código de la hoja impresa.
failure-other-clinics-keys = Las claves guardadas son de otra clínica, no de esta carpeta de datos.
failure-other-clinics-keys-advice = Elija las claves que se guardaron de esta clínica.
failure-keys-renewed-too-often = Las claves ya se han renovado { $most } veces y no se pueden renovar más.
failure-keys-renewed-too-often-advice = Prepare una clínica nueva en otra carpeta de datos y dé a cada paciente una tarjeta de ella.
failure-renewal-not-confirmed = Renovar las claves cambia para siempre el código de verificación de esta clínica.
failure-renewal-not-confirmed-advice = Para renovarlas, añada --yes.
failure-plan-of-many-keys = Las claves se han renovado más veces de las que caben en una tarjeta: el plan de { $code } tiene tarjetas de más de { $most } claves anteriores.
failure-plan-of-many-keys-advice = Empiece un plan nuevo: añada otra vez al paciente con otro código y emita allí una primera tarjeta.
failure-plan-of-missing-keys = { $code } tiene una tarjeta de claves posteriores a las que abren ahora esta clínica.
failure-plan-of-missing-keys-advice = Use las claves que se guardaron por última vez (carryover clinic passphrase --from-keys ARCHIVO); si se han perdido, añada otra vez al paciente con otro código y empiece un plan nuevo.
failure-passphrases-differ = Las dos contraseñas nuevas no coinciden.
failure-passphrases-differ-advice = Escriba dos veces la misma contraseña nueva.

## Profesionales, cada uno con su propia contraseña

clinicians = Profesionales
clinicians-what = Cada profesional abre los datos con su nombre y su propia contraseña, y todos tienen los mismos derechos. Quien tenga los archivos de este equipo puede leer los nombres.
clinician-name = Nombre del profesional
clinician-own-name = Su propio nombre
# Junto al nombre de quien ha abierto los datos.
clinician-you = usted
clinician-add = Añadir un profesional
clinician-add-now = Añadir a este profesional
clinician-first-passphrase = Su primera contraseña
clinician-first-passphrase-hint = Comuníquesela; la cambiará en esta página.
clinician-confirm = La contraseña de usted, para confirmarlo
clinician-confirm-removal = La contraseña de usted, para confirmar que se quita
clinician-remove = Quitar a un profesional
# El botón de uno de ellos. $name es un nombre.
clinician-remove-of = Quitar a { $name }
clinician-remove-what = Su contraseña ya no abre nada aquí. Quien tuvo las claves pudo copiarlas, y una copia de seguridad anterior aún se abre con su contraseña. Si eso importa, renueve también las claves.
clinician-added = Se ha añadido a { $name }.
clinician-removed = Se ha quitado a { $name }.
renew-keys-clinicians = Si hay varios profesionales, esto quita a los demás: añádalos de nuevo, cada uno con una primera contraseña.
