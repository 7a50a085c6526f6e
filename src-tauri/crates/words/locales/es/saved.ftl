## Archivos guardados: sus nombres y dónde están. $place es uno de los mensajes que empiezan por place-

saved-file = Guardado como { $name } { $place }.
saved-files = Guardado { $place }: { $names }.
saved-folder = Guardado { $place }.
saved-name-and-place = { $name } { $place }
saved-show = Mostrar en la carpeta
saved-not-shown = No se pudo abrir ningún programa de archivos. El archivo está aquí:
saved-gone = El archivo ya no está ahí. Se movió, se cambió de nombre o se eliminó.

place-documents = en su carpeta Documentos
place-documents-within = en la carpeta { $folder }, dentro de Documentos
place-downloads = en su carpeta Descargas
place-downloads-within = en la carpeta { $folder }, dentro de Descargas
place-desktop = en el escritorio
place-desktop-within = en la carpeta { $folder }, en el escritorio
place-home = en su carpeta personal
place-home-within = en la carpeta { $folder }, dentro de su carpeta personal
place-data = en la carpeta de datos de Carryover
place-data-within = en la carpeta { $folder }, dentro de la carpeta de datos de Carryover
place-other = en la carpeta { $folder }
place-inner = { $outer } / { $inner }
