# Español de España: solo los mensajes que difieren de es.

employer-can-read = En un ordenador de la empresa, quien lo administra puede leer lo que usted anote aquí.
