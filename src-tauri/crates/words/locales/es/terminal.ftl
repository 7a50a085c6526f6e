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
salvage-other = Otros datos
salvage-whole = { $name }: recuperados { $saved }, perdidos ninguno.
salvage-perhaps = { $name }: recuperados { $saved }. Puede haber otros perdidos.
salvage-lost = { $name }: recuperados { $saved }, perdidos al menos { $lost }.
salvage-kept = El archivo dañado se conserva como { $path }. Si una copia de seguridad contiene más, recupérela con carryover restore.
