# American English: only the messages that differ from en.

problem-not-ticked = Balance exercises at home are only for patients who do not have these. Check each one that you have ruled out: { $risks }.
problem-stance-too-short = Exercise { $item }: the patient stands less than 5 seconds on one leg with eyes open, so balance must not be practiced unsupervised.
