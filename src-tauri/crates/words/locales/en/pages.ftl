## First start: what the program is for, before the choice of a side; also at the head of Help

welcome-title = What Carryover is for
welcome-what = Carryover helps you do the exercises that your clinic prescribed: it reminds you, guides you and records how it went.
welcome-for = It is for people who do prescribed exercises between two visits, and for the clinicians who prescribe them.
# Safety.
welcome-not-device = Carryover is not a medical device. It does not diagnose, and it does not replace your clinic's advice.
# Safety.
welcome-not-emergency = It is not for emergencies. In an emergency, call your local emergency number. Nobody reads what you enter before your visit.
welcome-young = If you are under 18, use Carryover together with a parent or another adult who looks after you.
welcome-carer = If you care for somebody, use Carryover together with that person. Answers about pain and effort must be the person's own.
welcome-understood = I understand. Continue
# First start of the prescribing side.
welcome-clinic = Carryover is not a medical device. Its proposals follow fixed rules, and you decide. Local rules and your own judgement come first.
welcome-clinic-reading = Patients are told that nobody reads their entries before the visit. Do not use Carryover to watch over a patient.

## Privacy: a page

privacy-title = Privacy
privacy-no-server = There is no account and no server. Nothing leaves this device unless you save it or show it.
privacy-stored = This device stores your plans, what you did and when, your answers about pain and activities, what you reported, and your settings.
privacy-in-the-clear = On this device, Carryover does not encrypt your record. Anyone who can unlock or manage the device can read it. Lock your device.
privacy-summary = A summary is encrypted. Only your clinic can open it. An export is not encrypted.
privacy-card = Anyone who has your plan card can read your plan and can write summaries in your name.
privacy-notifications = Reminders say nothing medical, but people who see your screen can read them.
privacy-lost = If you lose the device, your record on it is lost unless you have a backup elsewhere. Tell your clinic, and ask for a new card.
# What leaves this device. The button, what is shown, and its figures.
privacy-bytes-title = What leaves this device
privacy-bytes-what = Only a summary leaves it, and only when you save it or show its codes. This is a summary as it would be made now: every byte, and what it means.
privacy-bytes-plan = Summary for { $clinic }
bytes-show = Show every byte
bytes-hide = Hide the bytes
# $plain, $packed: numbers of bytes.
# $plain (Number), $packed (Number)
bytes-sizes = { $plain } bytes, { $packed } once compressed. Then they are encrypted to your clinic's key: on the way, others see only the size and that it is an encrypted file.
bytes-around = Around them are the kind of file, the same numbers of plan, record and summary once more, and a proof that the sender has your card.
# $n: number of bytes.
# $n (Number)
bytes-count = { $n ->
        [one] { $n } byte
       *[other] { $n } bytes
    }
part-plan = Random number of your plan
part-log = Random number of the record on this device
part-counter = Number of this summary
part-from = First day, counted from the plan's start
part-until = Last day, counted from the plan's start
part-taken = Cards that you added: day, number, and the times you agreed on
part-seen = Days on which you opened Carryover
part-days = Each session by its day and its place in the day: done, done at another time, left out and why, or not done
part-runs = Each exercise you did: day, hour, side, level, seconds or repetitions, and how it ended
part-settled = Whether pain had settled by the next morning
part-rated = Your ratings of everyday activities
part-alarms = What you said was wrong: day, exercise, and your answers
part-delays = How long after the reminder you usually began, by week
part-note = Your note
part-corrections = What you corrected later
part-mornings = Your ratings of pain in the morning
part-during = Your ratings of pain while exercising
part-well-again = When you said that you are well again
part-former = Earlier numbers of this record, from before it was moved or restored
privacy-how-long = Your record stays on this device until you erase it. What your clinic has received stays there under its own rules.
privacy-young-and-carers = If somebody else uses or manages this device for you, that person can read your record.
# The same page on the prescribing side.
privacy-clinic-stored = Patients, what you tick for them, plans and summaries are stored on this computer, encrypted with your passphrase.
privacy-clinic-card-files = Card files that you save are not encrypted. Delete them when the patient has the card.
privacy-clinic-server = If you set a server for medical records, reviews that you hand over go to it, unencrypted, on this computer alone. No other connection is ever made. Nothing is set at the beginning.
privacy-clinic-lost = If you lose this computer, the clinic's data is lost unless you have a backup of the data folder. If you lose the passphrase, it is lost unless you have saved the keys. Keep all three apart.
privacy-clinic-how-long = The data stays in the data folder until you erase it. Local rules say how long you must keep records.

## Help: a page, question by question

help-title = Help
help-ask-where = Where do I find what?
help-now = Now shows what to do next. Plan shows everything that your clinic prescribed. Record shows what you did and how it went.
help-ask-wrong = What do I do if something is wrong?
help-wrong = If something is wrong, tap “Something is wrong”. In an emergency, call your local emergency number first.
help-ask-missed = What if I missed a session?
help-missed = If you missed a session, do the next one as planned. Do not do more at once to make up for it.
help-ask-soreness = Is soreness usual?
soreness-usual = Mild muscle soreness for a day or two is usual after new or harder exercises.
soreness-too-much = If soreness is strong, lasts more than three days, or comes with swelling, stop and contact your clinic. With dark urine, get medical help today.
help-ask-no-reminder = Why does no reminder come?
help-ask-two-devices = Can I use two devices?
help-two-devices = You can use the same card on two devices. Save a summary on each of them for your visit.
help-ask-new-device = What if I get a new device?
help-new-device = Save a backup on the old device and restore it on the new one: everything goes on there. Then stop using the old one. Without the old device you need a new card from your clinic, and what you recorded since your last visit is lost.
help-ask-stop = May I stop in the middle of an exercise?
help-stop = You can stop any exercise at any time.
help-ask-card = How does a patient get a plan?
help-card = Add the patient with a code, put exercises into the plan, and issue its card. The patient scans the card, or opens its picture, text or file.
help-ask-done = How do I see what was done?
help-done = At the visit, the patient saves an encrypted summary or shows it as codes. Choose the file, or photos of the codes, under “Receive summaries”. Then open the review.
help-ask-alone = Does a plan change while the patient is at home?
help-alone = Only a new card changes it. Where you allow it in an exercise, the patient may take the next step alone.
help-ask-alarm = How does an exercise restart after an alarm?
help-alarm = When you have talked about it, tick the alarm in the next plan and issue the card. Until the patient has that card, what the alarm paused stays paused.
help-ask-draft = What if I leave a plan before its card is issued?
help-draft = It is kept, encrypted, as a draft. Open the plan again to go on with it.

## Version and licences: a page

about-title = About Carryover
# $version: such as 0.4.0.
about-version = Version { $version }
about-data-folder = Data folder: { $folder }
licences-title = Licences
licences-program = Carryover is free software under the MIT licence or the Apache licence 2.0, as you choose.
licences-typeface = The typeface Atkinson Hyperlegible Next is under the SIL Open Font License 1.1.
licences-codes = Files for medical records hold codes of LOINC and SNOMED CT, whose owners ask for a notice.
licences-show-notices = Show the notices
licences-libraries = Carryover uses these libraries:
licences-show = Show the list

## Crash page: shown when the window's program has stopped. The bundler puts it into index.html in every language, because the program can then no longer show it

crash-title = This window has stopped
# Safety: first the person, then the program.
crash-what = If you are in the middle of an exercise, stop and rest first. Everything recorded so far is saved. Then open Carryover again.
crash-open-again = Open again
crash-details = For a report:
# $address: of a file of the program.
crash-could-not-load = could not load { $address }
# $rule: the page's security rule, in English.
crash-refused = blocked by { $rule }: { $address }
