# American English: only the messages that differ from en.

balance-at-home-what = Unsupervised practice needs all three parts. Local rules and your own judgment come first.
absent-title = Check only what the patient does NOT have
problem-ticks = { $n ->
        [one] { $n } line of the list is not checked yet.
       *[other] { $n } lines of the list are not checked yet.
    }
