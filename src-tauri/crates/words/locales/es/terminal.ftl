## Terminal

identity-warning = Quien tenga esta clave puede leer todos los resúmenes cifrados para esta clínica. Expórtela solo si la necesita y guárdela sin conexión a la red.
# $code: código del paciente.
receipt-new = { $days ->
       [one] { $file }: { $code }, { $days } día nuevo.
      *[other] { $file }: { $code }, { $days } días nuevos.
    }
receipt-updated = { $days ->
       [0] { $file }: { $code }, actualizado.
       [one] { $file }: { $code }, { $days } día actualizado.
      *[other] { $file }: { $code }, { $days } días actualizados.
    }
receipt-known = { $file }: { $code }, nada nuevo. No se cambió nada.

## Ejercicios propios de la clínica y conjuntos

# $revision (Number)
own-good = { $file }: { $name }, revisión { $revision }, se puede añadir.
# $revision (Number)
own-added = { $file }: { $name }, revisión { $revision }, añadido. Su id es { $id }.
# $revision (Number)
own-known = { $file }: { $name }, revisión { $revision }, ya está. No ha cambiado nada.
# $language: el nombre del idioma, como «Español».
own-only-language = Los textos de { $name } están en un solo idioma, { $language }. Todos los verán en ese.
own-offered = se ofrece
own-is-removed = quitado, se conserva para las revisiones
own-draft = sin terminar
own-gone = { $name } se ha quitado.
own-kept = { $name } se ha quitado y ya no se ofrece. Se conserva porque está en una tarjeta.
own-levels = Niveles: { $levels }
# $items (Number)
set-line = { $items ->
        [one] { $name }: { $items } ejercicio
       *[other] { $name }: { $items } ejercicios
    }
set-saved = Conjunto { $name } guardado.
set-removed = Conjunto { $name } quitado.
# $n (Number): de 2 a 8.
issue-codes = La tarjeta se puede emitir, en { $n } códigos.
issue-as-code = La tarjeta se puede emitir, como código.

## What was saved of a damaged data folder

salvage-entries = Anotaciones del registro
salvage-cards = Tarjetas de plan
salvage-patients = Pacientes
salvage-summaries = Resúmenes
salvage-keys = Claves
salvage-drafts = Planes sin terminar
salvage-norms = Tabla propia de tiempos
salvage-settings = Ajustes
salvage-devices = Dispositivos de los pacientes
salvage-manifest = Lista de las filas
salvage-own-exercises = Ejercicios propios
salvage-visits = Visitas
salvage-sets = Conjuntos
salvage-digests = Líneas guardadas de la lista
salvage-cases = Casos cerrados y reabiertos
salvage-clinicians = Otros profesionales
salvage-other = Otros datos
salvage-whole = { $name }: recuperados { $saved }, perdidos ninguno.
salvage-perhaps = { $name }: recuperados { $saved }. Puede haber otros perdidos.
salvage-lost = { $name }: recuperados { $saved }, perdidos al menos { $lost }.
salvage-kept = El archivo dañado se conserva como { $path }. Si una copia de seguridad contiene más, recupérela con carryover restore.

server-none = No hay ningún servidor configurado. No se entrega nada.
server-with-token = Las revisiones se entregan a { $address } en este ordenador, con clave de acceso.
server-without-token = Las revisiones se entregan a { $address } en este ordenador, sin clave de acceso.
record-handed-over = { $code }: entregado, { $added } entradas nuevas, { $known } sustituidas o sin cambios
terminal-to-clear = Para dar por resueltas estas alarmas con la próxima tarjeta, ponga esta línea en su archivo de plan:
