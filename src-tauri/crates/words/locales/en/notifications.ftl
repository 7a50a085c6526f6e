## Notifications of the system. Others may see them: nothing medical, no name of an exercise.

# $time: when the session is due. $takes: about-minutes-inline or about-seconds-inline. Such as "10:00: about a minute".
reminder-title = { $time }: { $takes }
reminder-body = Open Carryover when you are ready.
# Short buttons on the notification.
reminder-open = Open
reminder-later = In 10 minutes
reminder-skip = Skip this time
# $time: one of meeting-minutes or meeting-hours, such as "1 hour": so long no reminder comes.
reminder-meeting = In a meeting: { $time }
# In the menu of the tray: ends the program.
quit = Quit
# Title of the events in a calendar file: others may read it, nothing medical.
calendar-event-title = Carryover
# A line of the tray's menu while a plan is paused or stopped: others may read it, nothing medical.
tray-stopped = No reminders at present
