# Español de España: solo los mensajes que difieren de es.

welcome-not-device = Carryover no es un producto sanitario. No hace diagnósticos y no sustituye lo que le indique su clínica.
welcome-clinic = Carryover no es un producto sanitario. Sus propuestas siguen reglas fijas y quien decide es usted. Las normas locales y su propio criterio tienen prioridad.
privacy-clinic-stored = Los pacientes, lo que usted marca de ellos, los planes y los resúmenes se guardan en este ordenador, cifrados con su contraseña.
privacy-clinic-lost = Si pierde este ordenador, pierde los datos de la clínica, salvo que tenga una copia de seguridad de la carpeta de datos. Si pierde la contraseña, los pierde salvo que haya guardado las claves. Guarde las tres cosas por separado.
soreness-usual = Es normal tener agujetas uno o dos días después de ejercicios nuevos o más difíciles.
soreness-too-much = Si las agujetas son fuertes, duran más de tres días o aparecen con hinchazón, no siga y llame a su clínica. Si la orina es oscura, busque atención médica hoy mismo.
