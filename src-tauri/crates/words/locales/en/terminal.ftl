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

## Exercises of the clinic's own, and sets

# $revision (Number)
own-good = { $file }: { $name }, revision { $revision }, can be added.
# $revision (Number)
own-added = { $file }: { $name }, revision { $revision }, added. Its id is { $id }.
# $revision (Number)
own-known = { $file }: { $name }, revision { $revision }, is there already. Nothing was changed.
# $language: the language's name, such as "Español".
own-only-language = The texts of { $name } are in one language only, { $language }. Everybody will see them in that one.
own-offered = offered
own-is-removed = removed, kept for reviews
own-draft = unfinished
own-gone = { $name } is removed.
own-kept = { $name } is removed and no longer offered. It is kept because a card has it.
own-levels = Levels: { $levels }
# $items (Number)
set-line = { $items ->
        [one] { $name }: { $items } item
       *[other] { $name }: { $items } items
    }
set-saved = Set { $name } saved.
set-removed = Set { $name } removed.
# $n (Number): 2 to 8.
issue-codes = The card can be issued, as { $n } codes.
issue-as-code = The card can be issued, as a code.

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
salvage-own-exercises = Exercises of your own
salvage-visits = Visits
salvage-sets = Sets
salvage-digests = Stored lines of the list
salvage-cases = Closed and reopened cases
salvage-clinicians = Further clinicians
salvage-other = Other data
# $saved (Number)
salvage-whole = { $name }: { $saved } saved, none lost.
# $saved (Number)
salvage-perhaps = { $name }: { $saved } saved. Others may be lost.
# $saved (Number)
# $lost (Number)
salvage-lost = { $name }: { $saved } saved, at least { $lost } lost.
salvage-kept = The damaged file is kept as { $path }. If a backup has more in it, restore that with carryover restore.

# Where reviews are handed over to. $address: such as http://127.0.0.1:8080/fhir.
server-none = No server is set. Nothing is handed over.
server-with-token = Reviews are handed over to { $address } on this computer, with a token.
server-without-token = Reviews are handed over to { $address } on this computer, without a token.
# $added (Number), $known (Number): things that the server did not have, and had.
record-handed-over = { $code }: handed over, { $added } entries new, { $known } replaced or unchanged
# Before a line to be copied.
terminal-to-clear = To clear these alarms with the next card, put this line into its plan file:
