## Terminal

# Printed before the clinic's secret key.
identity-warning = Anyone who has this key can read every summary encrypted for this clinic. Export it only if you need it, and keep it offline.
receipt-new = { $days ->
        [one] { $file }: { $code }, { $days } new day.
       *[other] { $file }: { $code }, { $days } new days.
    }
receipt-updated = { $days ->
        [0] { $file }: { $code }, updated.
        [one] { $file }: { $code }, { $days } day updated.
       *[other] { $file }: { $code }, { $days } days updated.
    }
receipt-known = { $file }: { $code }, nothing new. Nothing was changed.
