# American English: only the messages that differ from en.

day-off-ill = sick
day-off-travelling = traveling
day-off-holiday = on vacation
aftercare-easy = No heavy lifting or sports for two days after the visit.
