## The clinic's passphrase, its lock and its saved keys

lock = Lock
lock-hint = Ctrl+L
keys-title = Passphrase and keys
idle-choice = Lock when nobody uses the program for
# $n (Number)
idle-minutes = { $n ->
        [one] { $n } minute
       *[other] { $n } minutes
    }
idle-what = It also locks when the computer wakes up from sleep. A plan that you were editing is kept, encrypted.

# While a passphrase is typed: a word, and what to do about it.
strength-too-short = Too short
strength-guessable = Easy to guess
strength-good = Good
strength-strong = Strong
strength-advice = Four or more words that have nothing to do with each other are hard to guess. Names, dates, repetitions and neighbouring keys are not.

passphrase-change = Change the passphrase
passphrase-old = Present passphrase
passphrase-new = New passphrase
passphrase-changed = The passphrase was changed.
# Security: said before and after the change.
passphrase-older-copies = Backups and saved keys from before still open with the old passphrase. Destroy them if somebody may know it.

saved-keys-title = Save the keys
saved-keys-what = With saved keys this clinic can be set up on a new computer, and a forgotten passphrase can be replaced. They contain no patient data, so keep a backup of the data folder as well.
saved-keys-passphrase = Passphrase for the saved keys
saved-keys-passphrase-hint = It may be another one than the clinic's. You need it to use the saved keys.
saved-keys-save = Save the keys
saved-keys-saved = Saved: the key file, and a sheet to print.
saved-keys-keep = Keep them away from this computer, and apart from their passphrase.

renew-keys-title = Renew the keys
renew-keys-what = For example because somebody may have copied the keys, or as often as your rules ask for it. From then on new cards are signed and summaries are encrypted with new keys. Plans go on, and summaries made with older cards still open. This clinic's security code changes: it will be another one on every new card.
# Security: what renewing the keys does not do.
renew-keys-not = It takes nothing back from whoever has a copy of the former keys. They can still open summaries made with older cards, and can still issue cards in this clinic's name for plans begun before. Give each patient a new card. If the keys may have been stolen, change the passphrase as well, and begin a new plan for each patient, under a new code.
renew-keys-passphrase = The clinic's passphrase, to renew the keys
renew-keys-understood = I will give out new cards, and save the keys again
renew-keys-renew = Renew the keys
renew-keys-done = The keys were renewed.
renew-keys-save = Save the keys again: what was saved before does not contain the new ones.
renew-keys-code = New security code: { $code }

identity-title = Secret key for other programs
identity-what = Any program for the age format can open this clinic's summaries with it. If the keys were renewed, there is one for each time.
identity-show = Show the secret key
identity-hide = Hide
confirm-passphrase = Enter the clinic's passphrase to confirm.
# In the terminal, in place of the secret key.
identity-masked = Not shown. Add --show to print it.

set-up-saved = I have this clinic's saved keys
set-up-saved-what = Choose the key file, or a photo of the code on the printed sheet. Their passphrase becomes the clinic's passphrase here.
set-up-saved-file = Key file or photo
set-up-saved-chosen = Chosen: { $file }

## The files of an issued card

# Safety of data.
card-files-clear = These files are not encrypted. Whoever has one can read the plan and use the card. Remove them when the patient has the card.
card-files-more = Save as SVG, text and file too
card-files-remove = Remove these files
card-files-removed = The files were removed. The card stays issued.
card-copied-readable = Copied. Other programs can read it; it is cleared when you leave this page.

## The printed sheet with the saved keys

key-sheet-title = Saved keys of { $clinic }
key-sheet-made = Made on { $day }
key-sheet-what = The code contains this clinic's keys, encrypted with the passphrase that was chosen for them. Without that passphrase it is useless.
key-sheet-restore = On a new computer, set up the clinic with “I have this clinic's saved keys”, and choose the key file or a photo of this code. Any program for the age format can decrypt the text below the code.
key-sheet-keep = Lock this sheet away, and keep the passphrase apart from it.
key-sheet-data = The keys contain no patient data. Patients, plans and summaries are in the data folder, of which you need a backup.
key-sheet-later = If the clinic renews its keys after the day above, this sheet does not contain the new ones. Then save them again and keep both sheets.
# Security: this sheet is not encrypted.
key-sheet-plain = This secret key is not encrypted. Whoever reads or photographs it can open every summary that was made for this clinic. Lock it away.
key-sheet-plain-not = It opens summaries with any program for the age format. It does not open the clinic's patients and plans, and it cannot set up the clinic.
key-sheet-plain-keep = If somebody else has seen it, this clinic's summaries are no longer secret.
key-sheet-plain-former = The keys were renewed. The line above each secret key names the days of the cards whose summaries it opens.

## Terminal

new-passphrase-prompt = New passphrase:
new-passphrase-again-prompt = New passphrase again:
name-prompt = Name (empty for none):

## Help

help-ask-lost = What if the keys or the passphrase are lost?
help-lost-passphrase = Passphrase lost, keys saved: nothing is lost. The saved keys replace the passphrase: carryover clinic passphrase --from-keys FILE.
help-lost-computer = Computer lost, keys saved: put the backup of the data folder onto a new computer; its passphrase opens it, or else the saved keys do. Without a backup, set up the clinic with the saved keys: patients and plans are lost here, and each patient needs a new card. A program for the age format still opens every summary with the secret key.
help-lost-both = Passphrase lost and no keys saved: nobody can open what is stored here, not even us. Set up the clinic anew. Patients need new cards, and what they have already handed over is lost. What is recorded on their own devices stays there.
help-lost-stolen = Keys in the wrong hands: change the passphrase, renew the keys under “Passphrase and keys”, save them again, and destroy old backups and saved keys. Whoever has the former keys and their passphrase can still read summaries made with older cards, and can still issue cards in this clinic's name for plans begun before. So begin a new plan for each patient, under a new code.
help-lost-renewed = Keys saved before they were renewed: they open the patients and plans, but not summaries made with newer cards, and they cannot continue plans that have such a card. Use the keys that were saved last: carryover clinic passphrase --from-keys FILE.

## Refusals

failure-guessable-passphrase = The passphrase is easy to guess.
failure-guessable-passphrase-advice = Choose four or more words that have nothing to do with each other, without names or dates.
failure-file-exposed = Other users of this computer can read { $file }, which contains a secret.
failure-file-exposed-advice = Allow only yourself to read it (chmod 600), and then try again.
failure-not-saved-keys = This does not contain a clinic's saved keys.
failure-not-saved-keys-advice = Choose the key file, its text, or a sharp photo of the code on the printed sheet.
failure-other-clinics-keys = The saved keys belong to another clinic than this data folder.
failure-other-clinics-keys-advice = Choose the keys that were saved from this clinic.
# $most (Number)
failure-keys-renewed-too-often = The keys were renewed { $most } times already, and cannot be renewed again.
failure-keys-renewed-too-often-advice = Set up a new clinic in another data folder, and give each patient a card of it.
failure-renewal-not-confirmed = Renewing the keys changes this clinic's security code for good.
failure-renewal-not-confirmed-advice = To renew them, add --yes.
# $most (Number)
failure-plan-of-many-keys = The keys were renewed more often than a card can say: { $code }'s plan has cards of more than { $most } former keys.
failure-plan-of-many-keys-advice = Begin a new plan: add the patient again under another code, and issue a first card there.
failure-plan-of-missing-keys = { $code } has a card of later keys than those with which this clinic is unlocked.
failure-plan-of-missing-keys-advice = Use the keys that were saved last (carryover clinic passphrase --from-keys FILE); if they are lost, add the patient again under another code and begin a new plan.
failure-passphrases-differ = The two new passphrases are not the same.
failure-passphrases-differ-advice = Enter the same new passphrase twice.

## Clinicians, each under a passphrase of their own

clinicians = Clinicians
clinicians-what = Each clinician unlocks with a name and a passphrase of their own, and has the same rights. Names can be read by whoever has this computer's files.
clinician-name = Clinician's name
clinician-own-name = Your own name
# Beside the name of whoever is in.
clinician-you = you
clinician-add = Add a clinician
clinician-add-now = Add this clinician
clinician-first-passphrase = Their first passphrase
clinician-first-passphrase-hint = Tell it to them; they change it on this page.
clinician-confirm = Your passphrase, to confirm it
clinician-confirm-removal = Your passphrase, to confirm the removal
clinician-remove = Remove a clinician
# The button of one of them. $name is a name.
clinician-remove-of = Remove { $name }
clinician-remove-what = Their passphrase opens nothing here any more. Whoever had the keys could have copied them, and a backup made before still opens with their passphrase. If that matters, renew the keys as well.
clinician-added = { $name } was added.
clinician-removed = { $name } was removed.
renew-keys-clinicians = If there are several clinicians, the others are removed by this: add them again, each with a first passphrase.
