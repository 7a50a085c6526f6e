# Español de México: solo los mensajes que difieren de es.

start-count = Iniciar la cuenta regresiva
not-alone = No se quede sin compañía y no maneje.
stay-at-login = Abrir al iniciar sesión en esta computadora
reminders-not-driving = No atienda un recordatorio mientras maneja, va en bicicleta, trabaja en altura o usa máquinas. Haga la sesión más tarde.
