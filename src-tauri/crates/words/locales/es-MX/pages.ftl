# Español de México: solo los mensajes que difieren de es.

welcome-not-device = Carryover no es un dispositivo médico. No hace diagnósticos y no sustituye lo que le indique su clínica.
welcome-clinic = Carryover no es un dispositivo médico. Sus propuestas siguen reglas fijas y quien decide es usted. Las normas locales y su propio criterio tienen prioridad.
privacy-clinic-stored = Los pacientes, lo que usted marca de ellos, los planes y los resúmenes se guardan en esta computadora, cifrados con su contraseña.
privacy-clinic-lost = Si pierde esta computadora, pierde los datos de la clínica, salvo que tenga una copia de seguridad de la carpeta de datos. Si pierde la contraseña, los pierde salvo que haya guardado las claves. Guarde las tres cosas por separado.
