# Español de México: solo los mensajes que difieren de es.

risk-neurological-unsteadiness = inestabilidad por enfermedad de Parkinson o por un evento vascular cerebral (EVC)
