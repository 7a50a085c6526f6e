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
