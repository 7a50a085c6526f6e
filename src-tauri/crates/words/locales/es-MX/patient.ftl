# Español de México: solo los mensajes que difieren de es.

start-count = Iniciar la cuenta regresiva
not-alone = No se quede sin compañía y no maneje.
stay-at-login = Abrir al iniciar sesión en esta computadora
