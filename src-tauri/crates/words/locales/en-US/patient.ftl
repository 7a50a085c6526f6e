# American English: only the messages that differ from en.

support-near = A countertop or a sturdy chair is within reach. The floor is clear and dry.
nerve-today = Contact your clinic or an urgent care center today.
emergency-department-now = Go to an emergency room now, even if it does not hurt.
tell-clinic-fall = Contact your clinic before you practice balance again, even if nothing hurts.
severe-urgent = If it is severe, does not ease, or comes with new weakness or numbness, call your local emergency number or go to an urgent care center now.
