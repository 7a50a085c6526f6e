### English as written in Britain: the bare language is that already.

language-name = English (United Kingdom)
