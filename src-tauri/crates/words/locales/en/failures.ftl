## What could not be done, and what to do about it.
## Each failure has two messages: what is wrong, and (-advice) what to do. Both are whole sentences.

# A text, code or file that should be a card and is something else.
failure-card-foreign = This is not a Carryover plan card.
failure-card-foreign-advice = Use the code, text or file that your clinic gave you.
failure-card-damaged = The card is damaged: part of it has been changed.
failure-card-damaged-advice = Scan or copy it again. If that fails, ask your clinic for a new card.
failure-card-cut = The card is incomplete: part of it is missing.
failure-card-cut-advice = Scan or copy the whole card again.
# $found, $known: versions of the card's format, whole numbers.
# $found (Number), $known (Number)
failure-card-newer = The card is version { $found }. This program reads cards up to version { $known }.
failure-card-newer-advice = Update the program, then add the card again.
failure-card-too-big = This is too large to be a plan card.
failure-card-too-big-advice = Use the code, text or file that your clinic gave you.
# Safety: somebody may have forged the card.
failure-card-other-clinic = The card refers to a plan that you have from another clinic, but that clinic did not sign it.
failure-card-other-clinic-advice = Do not use this card. Ask your clinic for a new one.
# $revision, $have: numbers of the plan's versions.
# $revision (Number), $have (Number)
failure-card-old = This card has version { $revision } of the plan. You already have version { $have }.
failure-card-old-advice = You do not need to do anything. If you expected a newer card, ask your clinic.
# $problems: one or more whole sentences, from the messages problem-….
failure-card-refused = The plan on this card cannot be used here. { $problems }
failure-card-refused-advice = Update the program, or ask your clinic for a new card.
# $of (Number)
# $have (Number)
# $missing: numbers of codes, such as "2 and 3".
failure-card-part = This card is shown as { $of } codes, of which { $have } are read. Still missing: { $missing }.
failure-card-part-advice = Read the missing codes too, in any order.
failure-card-own-unfit = This card has an exercise that your clinic wrote itself, and this program cannot read it.
failure-card-own-unfit-advice = Update the program. If that does not help, tell your clinic.
failure-no-code = There is no readable code in this picture.
failure-no-code-advice = Take a sharp, straight picture of the whole code, or use the card's text.
failure-not-a-picture = This file is neither a picture (PNG or JPEG) nor a card file.
failure-not-a-picture-advice = Choose the card's picture, text or file.
# $most (Number)
failure-picture-too-big = The picture is too large. Pictures of up to { $most } megapixels can be read.
failure-picture-too-big-advice = Take it with the camera's usual size, not the largest one.
# $most (Number)
failure-too-many-files = Too many files at once. Up to { $most } can be received in one go.
failure-too-many-files-advice = Receive them in parts.
# $file: its name. $most: one of the messages size-…
failure-file-too-big = { $file } is larger than the limit of { $most }.
failure-file-too-big-advice = Choose the right file.

failure-summary-foreign = This is not an encrypted Carryover summary.
failure-summary-foreign-advice = Ask the patient for the file that Carryover saved.
failure-summary-damaged = The summary is damaged or incomplete.
failure-summary-damaged-advice = Ask the patient to save it again.
failure-summary-other-clinic = The summary is encrypted for another clinic.
failure-summary-other-clinic-advice = Ask the patient for the summary of your plan; if the clinic renewed its keys after this data folder's backup was made, use the keys that were saved since (carryover clinic passphrase --from-keys FILE).
failure-summary-unknown-plan = The summary belongs to a plan that is not in this clinic's data.
failure-summary-unknown-plan-advice = Check that this is the data folder in which the card was issued.
# Safety: somebody may have forged the summary.
failure-summary-not-from-card = The summary does not come from a device that has the plan card.
failure-summary-not-from-card-advice = Do not use it. Ask the patient to save a new one.
failure-summary-number-taken = This device already sent another summary with the same number. That happens when its data was restored from a backup.
failure-summary-number-taken-advice = Ask the patient to save a new summary, then receive that one.
# $found (Number), $known (Number)
failure-summary-newer = The summary is version { $found }. This program reads summaries up to version { $known }.
failure-summary-newer-advice = Update the program, then receive the summary again.

# $most: a whole number.
# $most (Number)
failure-frames-too-many = The summary is too long to show as codes. Codes can carry up to { $most } bytes, encrypted.
failure-frames-too-many-advice = Choose fewer days, or save the summary as a file.
# $have, $of: whole numbers; $missing: a list of numbers, such as "2 and 5".
# $have (Number)
failure-frames-missing = { $of ->
        [one] { $have } of { $of } code was read.
       *[other] { $have } of { $of } codes were read.
    } Missing: { $missing }.
failure-frames-missing-advice = Take a picture of each missing code, then receive all of them together.
failure-frame-damaged = A code of this summary is damaged, or does not belong with the others.
failure-frame-damaged-advice = Take a new, sharp picture of each code, then receive all of them together.
failure-no-summary-code = There is no readable summary code in this picture.
failure-no-summary-code-advice = Take a sharp, straight picture of the whole code, or ask the patient for the encrypted file.

# $entry: a number.
# $entry (Number)
failure-no-such-entry = There is no entry { $entry } that can be corrected.
failure-no-such-entry-advice = Look at the list of entries that can be corrected, and use a number from it.
failure-correction-does-not-fit = This entry cannot be corrected in that way.
failure-correction-does-not-fit-advice = Delete it, or enter something that fits it: a score, an answer, a reason or days.

failure-file-missing = There is no file { $file }.
failure-file-missing-advice = Check the path.
failure-file-unreadable = Could not read { $file }.
failure-file-unreadable-advice = Check that it is the file or folder asked for, and that you have read permission.
failure-file-unwritable = Could not write { $file }.
failure-file-unwritable-advice = Choose a folder where you have write permission and where there is free space.
failure-folder-occupied = The folder { $folder } is not empty.
failure-folder-occupied-advice = Name a new folder or an empty one.

# $home: the path of the data folder.
failure-home-unnamed = This system names no folder for your data.
failure-home-unnamed-advice = Name one with --home.
failure-home-missing = There is no data folder at { $home }.
failure-home-missing-advice = Check the path, or start the program once to create the folder.
failure-home-read-only = Could not write to the data folder { $home }.
failure-home-read-only-advice = Give yourself write permission there, or choose another folder.
failure-home-full = There is no space left for the data folder { $home }.
failure-home-full-advice = Free some space, then try again. What was saved before is safe.
failure-home-disk = Could not read or write the data folder { $home }.
failure-home-disk-advice = Check the disk and your disk quota, then try again. What was saved before is safe.
failure-home-open-to-others = Other people can read or change what is in the folder { $home }.
failure-home-open-to-others-advice = Choose an empty folder, or one that only you can open.
failure-not-a-backup = { $file } is not a backup of this program, or it is damaged.
failure-not-a-backup-advice = Choose another file. Nothing was changed.
failure-home-is-file = { $home } is a file, not a folder.
failure-home-is-file-advice = Choose a folder for the data.
failure-home-newer = The data folder { $home } was made by a newer version of this program.
failure-home-newer-advice = Update the program. Nothing was changed.
failure-home-in-use = { $home } is open in another copy of the program.
failure-home-in-use-advice = Close the other copy first.
failure-home-damaged = The database in { $home } is damaged.
failure-home-damaged-advice = Nothing was changed. You can restore your last backup, or save what can be read; in a terminal with carryover restore and carryover salvage.
failure-home-foreign = The database in { $home } belongs to another program.
failure-home-foreign-advice = Choose another folder.

# Role: does exercises, or prescribes them.
failure-other-role = This data folder is set up for the other role.
failure-other-role-advice = Use --home to name the folder of the right role.
failure-only-sample = This is only a sample. Nothing in it is saved.
failure-only-sample-advice = Exit the sample first, then add your plan card.
failure-no-role = No role has been chosen for this data folder.
failure-no-role-advice = Start the program and choose whether you do exercises or prescribe them.

failure-wrong-passphrase = The passphrase is wrong.
failure-wrong-passphrase-advice = Try again. A lost passphrase cannot be recovered.
failure-passphrase-missing = No passphrase was given, and there is no terminal to ask for it.
failure-passphrase-missing-advice = Write it in the first line of a file, and name that file with --passphrase-file.
failure-weak-passphrase = { $least ->
        [one] The passphrase has fewer than { $least } character.
       *[other] The passphrase has fewer than { $least } characters.
    }
failure-weak-passphrase-advice = Choose a longer one, such as several words.
failure-keys-damaged = The clinic's keys are damaged.
failure-keys-damaged-advice = Restore the data folder from your last backup.
failure-clinic-not-started = This clinic has no keys yet.
failure-clinic-not-started-advice = Set up the clinic first.
failure-clinic-started = This clinic already has its keys.
failure-clinic-started-advice = Unlock it with its passphrase.
# When the clinic is set up. $most: a whole number.
failure-clinic-name-length = { $most ->
        [one] The clinic's name is empty or longer than { $most } character.
       *[other] The clinic's name is empty or longer than { $most } characters.
    }
failure-clinic-name-length-advice = Enter a name of that length.
failure-phone-unfit = { $most ->
        [one] A telephone number has at least three digits and at most { $most } character: digits, spaces and + - ( ) . /
       *[other] A telephone number has at least three digits and at most { $most } characters: digits, spaces and + - ( ) . /
    }
failure-phone-unfit-advice = Enter the number as patients would dial it, or leave it empty.
failure-clinic-name-unprintable = The clinic's name has a character that cannot be shown, such as a line break.
failure-clinic-name-unprintable-advice = Write the name as plain text on one line.
failure-clinic-locked = The clinic's data is locked.
failure-clinic-locked-advice = Enter the passphrase.
failure-screen-locked = Carryover is locked.
failure-screen-locked-advice = Enter your code.
failure-screen-code-wrong = This is not your code.
failure-screen-code-wrong-advice = Enter it again. Nothing was changed.
# $least (Number)
failure-screen-code-short = A code needs { $least } characters or more.
failure-screen-code-short-advice = Choose a longer one.
failure-no-such-patient = There is no patient with the code { $code }.
failure-no-such-patient-advice = Check the code, or add the patient.
failure-clinician-name-missing = A clinician's name is needed, because each has a passphrase of their own.
failure-clinician-name-missing-advice = Say the name (in the terminal with --clinician NAME).
failure-no-such-clinician = No clinician has the name { $name }.
failure-no-such-clinician-advice = Type the name as it was added.
failure-clinician-name-taken = There is a clinician { $name } already.
failure-clinician-name-taken-advice = Choose another name.
# $most (Number)
failure-too-many-clinicians = There are { $most } clinicians already.
failure-too-many-clinicians-advice = Remove one first.
failure-last-clinician = There is only one clinician.
failure-last-clinician-advice = Add another one first.
failure-clinician-is-you = Nobody can remove themselves.
failure-clinician-is-you-advice = Another clinician can do it.
failure-case-closed = The case of { $code } is closed.
failure-case-closed-advice = Open the case again first.
failure-case-open = The case of { $code } is open.
failure-case-open-advice = Nothing was changed.
failure-case-words-missing = For “other” it has to be said in words why the case is closed.
failure-case-words-missing-advice = Add a few words.
# $most (Number)
failure-case-closed-too-often = The case was closed { $most } times already.
failure-case-closed-too-often-advice = Add the patient anew under another code.
failure-code-taken = The code { $code } is already in use.
failure-code-taken-advice = Choose another code.
failure-code-bad = A code has 1 to 12 letters, digits or hyphens.
failure-code-bad-advice = Choose another code.
# $problems: one or more whole sentences, from the messages problem-….
failure-plan-refused = { $problems }
failure-plan-refused-advice = Change the plan, then issue it.
failure-plan-too-large = The exercises of your own in this plan are too large together for one card.
failure-plan-too-large-advice = Take one of them out, or shorten their texts.
failure-no-such-own = You have no exercise of your own called { $name }.
failure-no-such-own-advice = Look at the list of your own exercises, and use a name from it.
# $most (Number)
failure-too-many-own = You have { $most } exercises of your own or unfinished ones; there is no room for more.
failure-too-many-own-advice = Remove one that you no longer prescribe, then try again.
failure-no-such-set = You have no set called { $name }.
failure-no-such-set-advice = Look at the list of your sets, and use a name from it.
# $most (Number)
failure-set-name-unfit = The name of a set has 1 to { $most } characters, all of them visible.
failure-set-name-unfit-advice = Choose another name.
failure-set-refused = { $problems }
failure-set-refused-advice = Change the plan file, then save the set.
# $most (Number)
failure-too-many-sets = You have { $most } sets; there is no room for more.
failure-too-many-sets-advice = Remove one that you no longer use, then try again.

# $most (Number): characters.
failure-visit-text = This text has 1 to { $most } characters where it may not be empty, at most { $most } otherwise, all of them visible.
# $least (Number), $most (Number)
failure-visit-value = This number is from { $least } to { $most }; pain and counts are whole numbers.
failure-visit-trials = A measure has one to three results.
failure-visit-side = The side is missing, or is none that fits.
failure-visit-unfit-advice = Correct it and note it again. Nothing was stored.
failure-visit-changed = What you wanted to correct was changed meanwhile, or is not there.
failure-visit-changed-advice = Look at the visit again, then correct it.
failure-visit-not-screened = There is no earlier screening that could be repeated.
failure-visit-not-screened-advice = Ask about each condition, and note what holds.
# $most (Number)
failure-too-many-findings = This patient's visits already have { $most } entries, and there is no room for more.
failure-too-many-findings-advice = Export the review for your records and begin a new patient code.

# $revision (Number)
failure-card-not-saved = Plan { $revision } for { $code } is issued, but its card could not be saved in { $folder }.
failure-card-not-saved-advice = Make room or choose another folder, then show the card again from the patient's review, or run carryover clinic card. The plan does not need to be issued again.
failure-diary-day = { $date } is not a day of the plan so far.
failure-diary-day-advice = Enter days from the plan’s first day up to today.
# $most (Number)
failure-diary-number = { $date } names something that was never in the plan, or more than { $most } sessions.
failure-diary-number-advice = Correct that day, and enter it again. Nothing was stored.
failure-no-card-issued = No plan was issued for { $code } yet.
failure-no-card-issued-advice = Issue a plan first.
failure-nothing-to-export = There is no plan and no visit yet, so there is nothing to export.
failure-nothing-to-export-advice = Issue a plan or note a visit first.
# $revision (Number)
failure-no-such-revision = { $code } has no plan { $revision }.
failure-no-such-revision-advice = Check the number of the plan, or leave it out for the newest one.
failure-record-damaged = The record of { $code } is damaged.
failure-record-damaged-advice = Restore a backup of the clinic's data. The other patients' records can still be used.
failure-records-damaged = { $n ->
        [one] This was not found, but { $n } patient's record is damaged, and it may be in that one.
       *[other] This was not found, but { $n } patients' records are damaged, and it may be in one of them.
    }
failure-removal-not-confirmed = This would permanently remove { $code }: the name, every plan and every summary, also from the automatic backups.
failure-removal-not-confirmed-advice = Type the patient's code to confirm, or add --yes. With --keep-backups the backups stay as they are.
# $device: the name of a device, 16 characters.
failure-no-such-device = No summary of { $code } came from a device { $device }.
failure-no-such-device-advice = Look at the list of devices, and use a name from it.
# Safety: somebody else may use the clinic's name.
failure-clinic-name-known = This card names { $clinic }, but it was not signed with the key of the card that you already have from { $clinic }. Its security code is { $fingerprint }.
failure-clinic-name-known-advice = Ask your clinic whether this is their security code. Only if it is, add --yes.

failure-no-plan = There is no plan yet.
failure-no-plan-advice = Add the card that your clinic gave you.
failure-which-plan = You have more than one plan.
failure-which-plan-advice = Name the plan with --plan.
failure-no-such-item = This exercise is not in the plan.
failure-no-such-item-advice = Look at the plan again. It may have been replaced.
failure-no-such-session = The plan does not have a session at this time.
failure-no-such-session-advice = Look at the day again. The plan may have been replaced.
# Safety: the patient reported trouble, and the exercise must not go on.
failure-paused = This exercise is paused for safety because you said something was wrong.
failure-paused-advice = Contact your clinic. Only a new card from your clinic can restart the exercise.
failure-empty-period = There is no day of the plan in this period.
failure-empty-period-advice = Choose a period from the start of the plan to today.
# $least, $most: whole numbers.
# $least (Number), $most (Number)
failure-out-of-range = The number must be from { $least } to { $most }.
failure-out-of-range-advice = Choose a number in that range.
# Hours without reminders.
# $most (Number)
failure-no-reminder-hours-wrong = Hours without reminders need a start and a different end, such as 12:00-13:00. You can have up to { $most } of them.
failure-no-reminder-hours-wrong-advice = Correct them. Until then the earlier ones apply.
failure-nothing-due = No session is due from now until the next visit.
failure-nothing-due-advice = Add a new card, or look on the Plan page to see what is paused for safety.
failure-not-confirmed = This would permanently erase what is in { $home }: the plans, everything you recorded, the settings and the link to your clinic. Files that you saved yourself stay.
failure-not-confirmed-advice = Export what you want to keep, then add --yes.
# $detail: what the operating system said, in its own language.
failure-at-login-refused = The system did not allow this change: { $detail }
failure-at-login-refused-advice = Check in the system's settings which programs open at login.
failure-text-not-allowed = { $most ->
        [one] The text is longer than { $most } character, or has a character that cannot be shown.
       *[other] The text is longer than { $most } characters, or has a character that cannot be shown.
    }
failure-text-not-allowed-advice = Shorten it, and write it on one line.
# A file that a person wrote. $file: its name. $fault: one of the messages file-fault-… in file-faults.ftl; it has no full stop.
failure-not-understood = Could not understand { $file }: { $fault }.
failure-not-understood-advice = Correct it, then try again.
# The same where the line is known. $line (Number): from 1.
failure-not-understood-line = { $file }, line { $line }: { $fault }.
failure-not-understood-line-advice = Correct the file.
# $detail: technical, for the report, always in English.
failure-internal = The program has a fault: { $detail }.
failure-internal-advice = Start it again. What was saved is safe. If it happens again, report it.

## What keeps a plan from being issued or used. Whole sentences; $item is the exercise's number in the plan.
## (Next to the exercise's name a short form from clinic.ftl is shown: problem-dose, problem-side …)

problem-no-item = The plan has no exercise.
problem-too-many = The plan has more entries than it can hold.
# $most (Number)
problem-text-clinic = The clinic's name is empty or longer than { $most } characters.
# $most (Number)
problem-text-phone = The clinic's telephone number needs at least three digits and at most { $most } characters: digits, spaces and + - ( ) . /
# $most (Number)
problem-text-complaint = The name of a complaint is empty or longer than { $most } characters.
# $most (Number)
problem-text-activity = The name of an activity is empty or longer than { $most } characters.
# $most (Number)
problem-text-note = The note to an exercise is empty or longer than { $most } characters.
# $most (Number)
problem-text-aftercare = A line of aftercare is empty or longer than { $most } characters.
problem-same-number = Two entries of the plan have the same number.
problem-review-date = The date of the next visit must be after today and within one year.
# $id: the exercise's name in the catalogue, an English identifier such as wall-sit.
problem-unknown-exercise = The exercise “{ $id }” is not in this program's catalogue.
problem-other-content = This program has a different version of the exercise “{ $id }”.
# $item (Number)
problem-level-missing = Exercise { $item } needs a level.
# $rung: the level's identifier in the catalogue.
problem-unknown-level = The level “{ $rung }” is not in this program's catalogue.
# $item (Number)
problem-dose-of = The dose of exercise { $item } is out of range.
# $item (Number), $minutes (Number)
problem-too-much-work-of = Exercise { $item } has more than { $minutes } minutes of work on one side at a time.
# $item (Number)
problem-side-of = The side of exercise { $item } does not fit the exercise.
# $item (Number)
problem-schedule-of = The times of exercise { $item } are empty or out of range.
# $item (Number)
problem-load-of = Exercise { $item } has a load or an effort that an exercise of its kind cannot have.
# $item (Number)
problem-phase-of = The first and last day of exercise { $item } must lie within the plan, the last one not before the first.
# $item (Number), $other (Number)
problem-overlap-of = Exercise { $item } is the same as exercise { $other } on the same side, on some of the same days: let one begin after the other has ended.
# $item (Number)
problem-once-a-day-of = Exercise { $item } is done once on days that the patient chooses: it needs one time of day, 3:00 or later.
# $item (Number)
problem-complaint-gone-of = Exercise { $item } is for a complaint that is not in the plan.
problem-age-missing = Balance exercises at home need the patient's age group.
# $risks: several of the messages risk-…, joined by "; ".
problem-not-ticked = Balance exercises at home are only for patients who do not have these. Tick each one that you have ruled out: { $risks }.
problem-not-confirmed = The list of what the patient does not have was last confirmed on { $day }. Confirm that it is still true today.
# $item (Number)
problem-no-stance-baseline = Exercise { $item } needs today's time on one leg for each prescribed side, with eyes open on a firm floor.
# Safety: balance at home is not allowed.
# $item (Number)
problem-stance-too-short = Exercise { $item }: the patient stands less than 5 seconds on one leg with eyes open, so balance must not be practised unsupervised.
# $item (Number)
problem-gate-closed = Exercise { $item }: a softer surface or closed eyes are not allowed until 30 s is reached with eyes open on a firm floor, today and at an earlier visit.
# $item (Number)
problem-soft-and-closed = Exercise { $item }: from the age of 65, a soft surface with closed eyes is not allowed unsupervised.

## What must be absent before balance is practised at home; the clinician ticks what the patient does NOT have.

risk-high-fall-risk = a fall with injury, two or more falls in a year, frailty, unable to get up for an hour after a fall, or a fall with loss of consciousness
risk-vertigo-or-fainting = vertigo, attacks of dizziness from the inner ear, or fainting, under investigation
risk-numb-feet = neuropathy or numb feet
risk-neurological-unsteadiness = unsteadiness from Parkinson's disease or a stroke
risk-partial-weight-bearing = an orthosis or partial weight-bearing
risk-fresh-injury = a recent fracture, operation or ligament tear
risk-severe-osteoporosis = severe osteoporosis
risk-sedatives-or-alcohol = sedatives or alcohol
risk-severe-visual-loss = severe loss of vision (for closed eyes)
risk-cognitive-impairment = cognitive impairment
risk-late-pregnancy = late pregnancy

failure-plan-card-not-summary = This is a plan card, not a summary.
failure-plan-card-not-summary-advice = The card is for the patient to scan. Choose the encrypted file that the patient saved, or a picture of its codes.
failure-report-of-one = A report is about one patient, and is a file.
failure-report-of-one-advice = Name the patient’s code, and the file with --out.
failure-server-not-set = No server is set to which reviews could be handed over.
failure-server-not-set-advice = Set its address with “clinic server”.
failure-server-elsewhere = The address of the server has to be on this computer, such as http://127.0.0.1:8080/fhir.
failure-server-elsewhere-advice = Write 127.0.0.1, [::1] or localhost, the port and the path. For a server elsewhere, save the review as a file.
failure-server-token = The token has signs that no token can have, or is too long.
failure-server-token-advice = Copy it again from the server, in one line, into a file that only you can read.
failure-server-down = No server answers at the address on this computer.
failure-server-down-advice = Start it, or check the address, and hand over again.
# $seconds (Number)
failure-server-slow = { $seconds ->
        [one] The server did not answer within { $seconds } second.
       *[other] The server did not answer within { $seconds } seconds.
    }
failure-server-slow-advice = Hand over again later. What the server has taken in already is replaced, not doubled.
failure-server-sends-on = The server sends on to another address, which is not followed.
failure-server-sends-on-advice = Set the address at which the server itself takes records in.
# $status (Number)
failure-server-not-let-in = The server does not let this clinic in ({ $status }).
failure-server-not-let-in-advice = Set the token that the server expects.
# $status (Number)
failure-server-refused = The server did not take in { $code } ({ $status }).
# $status (Number)
failure-server-refused-saying = The server did not take in { $code } ({ $status }). It says: { $said }
failure-server-refused-advice = Show this to whoever looks after the server.
# $status (Number)
failure-server-failed = The server failed ({ $status }).
failure-server-failed-advice = Hand over again later. What the server has taken in already is replaced, not doubled.
failure-server-not-understood = What the server answered is no answer to what was sent, so it is not known whether it was taken in.
failure-server-not-understood-advice = Check that the address is that of a server for HL7 FHIR R4, and hand over again: nothing is doubled.
