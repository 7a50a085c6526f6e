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

identity-title = Clave secreta para otros programas
identity-what = Con ella, cualquier programa para el formato age puede abrir los resúmenes de esta clínica.
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
key-sheet-plain = Esta clave secreta no está cifrada. Quien la lea o la fotografíe puede abrir todos los resúmenes hechos para esta clínica. Guárdela bajo llave.
key-sheet-plain-not = Abre los resúmenes con cualquier programa para el formato age. No abre los pacientes ni los planes de la clínica, y con ella no se puede preparar la clínica.
key-sheet-plain-keep = Si otra persona la ha visto, los resúmenes de esta clínica ya no son secretos.

## Terminal

new-passphrase-prompt = Contraseña nueva:
new-passphrase-again-prompt = Repita la contraseña nueva:
name-prompt = Nombre (vacío si no quiere ninguno):

## Ayuda

help-ask-lost = ¿Y si se pierden las claves o la contraseña?
help-lost-passphrase = Contraseña perdida, claves guardadas: no se pierde nada. Las claves guardadas sustituyen la contraseña: carryover clinic passphrase --from-keys ARCHIVO.
help-lost-computer = Equipo perdido, claves guardadas: ponga la copia de seguridad de la carpeta de datos en un equipo nuevo; se abre con su contraseña o, si no, con las claves guardadas. Sin copia, prepare la clínica con las claves guardadas: aquí se pierden los pacientes y los planes, y cada paciente necesita una tarjeta nueva. Un programa para el formato age sigue abriendo cualquier resumen con la clave secreta.
help-lost-both = Contraseña perdida y claves sin guardar: nadie puede abrir lo que hay aquí, ni siquiera quienes hacen este programa. Prepare la clínica de nuevo. Los pacientes necesitan tarjetas nuevas, y lo que ya habían entregado se pierde. Lo registrado en sus dispositivos sigue allí.
help-lost-stolen = Claves en malas manos: cambie la contraseña y destruya las copias y las claves guardadas anteriores. Quien tenga las claves y su contraseña puede leer los resúmenes y emitir tarjetas en nombre de esta clínica. Después prepare una clínica nueva y dé una tarjeta nueva a cada paciente.

## Negativas

failure-guessable-passphrase = La contraseña es fácil de adivinar.
failure-guessable-passphrase-advice = Elija cuatro o más palabras que no tengan nada que ver entre sí, sin nombres ni fechas.
failure-file-exposed = Otros usuarios de este equipo pueden leer { $file }, que contiene un secreto.
failure-file-exposed-advice = Permita leerlo solo a usted (chmod 600) e inténtelo de nuevo.
failure-not-saved-keys = Esto no contiene las claves guardadas de una clínica.
failure-not-saved-keys-advice = Elija el archivo de claves, su texto o una foto nítida del código de la hoja impresa.
failure-other-clinics-keys = Las claves guardadas son de otra clínica, no de esta carpeta de datos.
failure-other-clinics-keys-advice = Elija las claves que se guardaron de esta clínica.
failure-passphrases-differ = Las dos contraseñas nuevas no coinciden.
failure-passphrases-differ-advice = Escriba dos veces la misma contraseña nueva.
