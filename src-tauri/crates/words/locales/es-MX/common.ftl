# Español de México: solo los mensajes que difieren de es.

employer-can-read = En una computadora de la empresa, quien la administra puede leer lo que usted anote aquí.
