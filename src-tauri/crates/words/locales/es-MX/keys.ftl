# Español de México: solo los mensajes que difieren de es.

idle-what = También se bloquea cuando la computadora sale de la suspensión. Un plan que estuviera editando se conserva, cifrado.
saved-keys-what = Con las claves guardadas se puede preparar esta clínica en una computadora nueva y sustituir una contraseña olvidada. No contienen datos de pacientes, así que tenga también una copia de seguridad de la carpeta de datos.
saved-keys-keep = Guárdelos lejos de esta computadora y separados de su contraseña.
key-sheet-restore = En una computadora nueva, prepare la clínica con «Tengo las claves guardadas de esta clínica» y elija el archivo de claves o una foto de este código. Cualquier programa para el formato age puede descifrar el texto que está debajo del código.
help-lost-computer = Computadora perdida, claves guardadas: ponga la copia de seguridad de la carpeta de datos en una computadora nueva; se abre con su contraseña o, si no, con las claves guardadas. Sin copia, prepare la clínica con las claves guardadas: aquí se pierden los pacientes y los planes, y cada paciente necesita una tarjeta nueva. Un programa para el formato age sigue abriendo cualquier resumen con la clave secreta.
failure-file-exposed = Otros usuarios de esta computadora pueden leer { $file }, que contiene un secreto.
