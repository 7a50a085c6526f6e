# Español de España: solo los mensajes que difieren de es.

stay-at-login = Abrir al iniciar sesión en este ordenador
