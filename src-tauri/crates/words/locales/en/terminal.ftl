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

## What was saved of a damaged data folder

salvage-entries = Entries of the record
salvage-cards = Plan cards
salvage-patients = Patients
salvage-summaries = Summaries
salvage-keys = Keys
salvage-drafts = Unfinished plans
salvage-norms = Own table of times
salvage-settings = Settings
salvage-devices = Devices of patients
salvage-manifest = List of the rows
salvage-other = Other data
# $saved (Number)
salvage-whole = { $name }: { $saved } saved, none lost.
# $saved (Number)
salvage-perhaps = { $name }: { $saved } saved. Others may be lost.
# $saved (Number)
# $lost (Number)
salvage-lost = { $name }: { $saved } saved, at least { $lost } lost.
salvage-kept = The damaged file is kept as { $path }. If a backup has more in it, restore that with carryover restore.
