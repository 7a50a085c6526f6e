# Español de España: solo los mensajes que difieren de es.

clinic-setup-what = Esta clínica firma las tarjetas de los planes, y los resúmenes se cifran para ella. Sus claves se quedan en este ordenador, protegidas con una contraseña.
