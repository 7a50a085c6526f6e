# Español de España: solo los mensajes que difieren de es.

idle-what = También se bloquea cuando el ordenador sale de la suspensión. Un plan que estuviera editando se conserva, cifrado.
saved-keys-what = Con las claves guardadas se puede preparar esta clínica en un ordenador nuevo y sustituir una contraseña olvidada. No contienen datos de pacientes, así que tenga también una copia de seguridad de la carpeta de datos.
saved-keys-keep = Guárdelos lejos de este ordenador y separados de su contraseña.
key-sheet-restore = En un ordenador nuevo, prepare la clínica con «Tengo las claves guardadas de esta clínica» y elija el archivo de claves o una foto de este código. Cualquier programa para el formato age puede descifrar el texto que está debajo del código.
help-lost-computer = Ordenador perdido, claves guardadas: ponga la copia de seguridad de la carpeta de datos en un ordenador nuevo; se abre con su contraseña o, si no, con las claves guardadas. Sin copia, prepare la clínica con las claves guardadas: aquí se pierden los pacientes y los planes, y cada paciente necesita una tarjeta nueva. Un programa para el formato age sigue abriendo cualquier resumen con la clave secreta.
failure-file-exposed = Otros usuarios de este ordenador pueden leer { $file }, que contiene un secreto.
