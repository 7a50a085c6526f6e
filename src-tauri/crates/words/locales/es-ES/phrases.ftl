# Español de España: solo los mensajes que difieren de es.

language-name = Español (España)
