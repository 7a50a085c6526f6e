# Español de México: solo los mensajes que difieren de es.

clinic-setup-what = Esta clínica firma las tarjetas de los planes, y los resúmenes se cifran para ella. Sus claves se quedan en esta computadora, protegidas con una contraseña.
patients-none = Aún no hay pacientes. Añada uno con un código que usted elija, como el número del expediente clínico.
unread-stance = «{ $typed }» no es un número de segundos entre 0 y 600. Escríbalo así: 12.4.
