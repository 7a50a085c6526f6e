# American English: only the messages that differ from en.

strength-advice = Four or more words that have nothing to do with each other are hard to guess. Names, dates, repetitions and neighboring keys are not.
