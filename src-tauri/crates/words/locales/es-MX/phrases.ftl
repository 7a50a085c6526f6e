# Español de México: solo los mensajes que difieren de es.

locale-clock = 12
locale-decimal-mark = .
time-am = { $hour }:{ $minute } a.m.
time-pm = { $hour }:{ $minute } p.m.
language-name = Español (México)
