# American English: only the messages that differ from en.

welcome-clinic = Carryover is not a medical device. Its proposals follow fixed rules, and you decide. Local rules and your own judgment come first.
licences-title = Licenses
licences-program = Carryover is free software under the MIT license or the Apache License 2.0, as you choose.
