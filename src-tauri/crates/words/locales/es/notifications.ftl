## Avisos

# Aviso del sistema: otra persona puede ver la pantalla, así que nada médico ni el nombre de un ejercicio.
# $time: aquí, hora SIN artículo (time-24, time-am o time-pm). $takes: about-minutes-inline o about-seconds-inline. "10:00: alrededor de un minuto".
reminder-title = { $time }: { $takes }
reminder-body = Abra Carryover cuando quiera.
reminder-open = Abrir
reminder-later = En 10 minutos
reminder-skip = Omitir esta vez
# $time: uno de los mensajes meeting-minutes o meeting-hours, "1 hora": ese tiempo sin recordatorios.
reminder-meeting = En una reunión: { $time }
# En el menú de la bandeja: cierra el programa.
quit = Salir
# Título de las citas en un archivo de calendario: otras personas pueden leerlo, nada médico.
calendar-event-title = Carryover
# Una línea del menú de la bandeja mientras un plan está suspendido o detenido: otras personas pueden leerla, nada médico.
tray-stopped = Por ahora no hay recordatorios
