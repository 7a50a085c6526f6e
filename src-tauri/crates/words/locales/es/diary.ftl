### Un diario que el paciente llevó en papel, introducido en la consulta.

# Abre la página.
paper-diary-open = Introducir un diario en papel
# $who: el código y el nombre.
paper-diary-of = Diario en papel: { $who }
paper-diary-what = Cuántas sesiones se marcaron cada día, y el dolor por la mañana. Deje vacío un día del que el diario no diga nada; 0 es un día en que no se hizo nada. Lo que se introduce aquí queda marcado en la revisión como anotado después.
paper-diary-earlier = Días anteriores
paper-diary-later = Días posteriores
paper-diary-from-until = Del { $from } al { $until }
# El título de una columna. $name: un ejercicio.
paper-diary-sessions = { $name }, sesiones
# El título de una columna. $name: una molestia.
paper-diary-pain = Dolor por la mañana: { $name }
# Junto a un campo: cuántas sesiones tocaban ese día. $n (Number)
paper-diary-due = de { $n }
# El nombre de un campo. $column: el título de su columna; $day: una fecha.
paper-diary-field = { $column }, { $day }
paper-diary-save = Guardar estos días
paper-diary-saved = Guardado. La revisión cuenta estos días.
# $most (Number)
paper-diary-unfit = { $field }: un número entero de 0 a { $most }. Corríjalo y guarde.
paper-diary-nothing = No se cambió nada.
paper-diary-none = Aún no se ha introducido nada.
# $day: una fecha; $list: lo introducido.
paper-diary-line = { $day }: { $list }
paper-diary-nothing-done = nada hecho
# $name: un ejercicio. $n (Number), $due (Number)
paper-diary-done = { $name } { $n } de { $due }
# $name: un ejercicio sin horas fijas. $n (Number)
paper-diary-done-free = { $name } { $n }
# $name: una molestia. $score (Number)
paper-diary-morning = { $name } { $score } de 10 por la mañana
# En la lista de dispositivos.
paper-diary-device = Introducido en la consulta desde un diario en papel, hasta el { $until }.
paper-diary-device-by = Introducido en la consulta desde un diario en papel, hasta el { $until }, por última vez por { $who }.
paper-diary-left-out = El diario en papel no se tiene en cuenta en esta revisión, porque así lo eligió la clínica.
