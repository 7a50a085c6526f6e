### British English: only the name of the language differs from en.

language-name = English (United Kingdom)
