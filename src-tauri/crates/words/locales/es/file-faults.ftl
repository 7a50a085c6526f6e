## Qué está mal en un archivo que escribió una persona: un ejercicio, un plan, sesiones, la tabla de una clínica, una tabla de números.
## Va detrás de "{ $file }, línea { $line }:" y delante de un punto: empieza en minúscula, no lleva punto final y puede nombrar
## campos y palabras del archivo, que son identificadores en inglés y no se traducen. $allowed: esas palabras, unidas con comas.

## Cualquier archivo

file-fault-not-utf8 = aquí se espera texto en UTF-8
# $most: uno de los mensajes size-...
file-fault-too-large = el archivo supera el límite de { $most }
# $detail: mensaje del analizador, en inglés.
file-fault-not-toml = no es TOML válido: { $detail }
# $column: un número; $detail: mensaje del analizador, en inglés.
file-fault-not-json = no es un objeto JSON válido, en el carácter { $column }: { $detail }
# $field: nombre del campo en el archivo. $fault: otro mensaje de este archivo.
file-fault-in-field = { $field }: { $fault }
file-fault-unknown-field = aquí no existe el campo «{ $found }»; se permite: { $allowed }
file-fault-missing-field = falta el campo «{ $field }»
file-fault-unknown-word = aquí no se permite «{ $found }»; se permite: { $allowed }
# $expected, $found: mensajes file-kind-...
file-fault-wrong-kind = aquí se espera { $expected }, pero hay { $found }
file-fault-number-range = aquí se espera un número entre { $least } y { $most }
# $least, $most, $found: números de caracteres.
file-fault-text-length = aquí se espera un texto de { $least } a { $most } caracteres, pero este tiene { $found }
# $least, $most, $found: números de elementos de una lista.
file-fault-list-length = { $found ->
        [one] aquí se espera una lista de { $least } a { $most } elementos, pero hay { $found }
       *[other] aquí se espera una lista de { $least } a { $most } elementos, pero hay { $found }
    }
# Una elección que necesita exactamente uno de varios campos. $fields: unidos con comas.
file-fault-one-of-fields = aquí hace falta exactamente uno de estos campos: { $fields }
file-fault-date = aquí se espera una fecha como { $example }
# $today: una fecha como 2026-11-25.
file-fault-date-after-today = la fecha no puede ser posterior a hoy, { $today }
file-fault-time = aquí se espera una hora como "09:00"
# $example: un instante como 2026-11-25T09:02:00+01:00.
file-fault-instant = aquí se espera una fecha y hora como { $example }, entre 2020 y 2199
file-fault-duplicate = «{ $id }» aparece dos veces; úselo una sola vez
file-fault-id-empty = aquí se espera un identificador, pero está vacío
# $most: un número.
file-fault-id-too-long = un identificador tiene hasta { $most } caracteres
file-fault-id-form = un identificador tiene minúsculas, cifras y guiones sueltos entre ellas

## Tipos de valor, para file-fault-wrong-kind

file-kind-text = un texto
file-kind-whole-number = un número entero
# Donde se espera cualquier número.
file-kind-any-number = un número
# Lo que hay donde se espera un número entero.
file-kind-number = un número con punto decimal
file-kind-truth = true o false
file-kind-date-or-time = una fecha o una hora
file-kind-list = una lista
file-kind-table = una tabla
file-kind-nothing = nada
# $n: un número.
file-kind-list-of-numbers = { $n ->
        [one] una lista de { $n } número
       *[other] una lista de { $n } números
    }

## Los archivos de un ejercicio: uno en TOML y, junto a él, un archivo de idioma (Fluent) para cada idioma

# $detail: mensaje del analizador, en inglés.
file-fault-not-fluent = no es Fluent válido: { $detail }
file-fault-placeable = aquí se espera texto sin formato; entre llaves solo se permite texto entre comillas
file-fault-attribute = aquí no se permiten atributos; un mensaje es texto sin formato
file-fault-term = aquí no se permiten términos; escriba un mensaje en su lugar
file-fault-missing-message = falta este mensaje
# $allowed: id de mensajes, unidos con comas.
file-fault-unknown-message = no existe tal mensaje; se permite: { $allowed }, donde N es un número a partir de 1 y RUNG el id de un nivel
# $levels: los id de los niveles, unidos con comas.
file-fault-no-such-level = el ejercicio no tiene el nivel «{ $found }»; sus niveles: { $levels }
# $missing: id de un mensaje, como step-2.
file-fault-gap = antes falta «{ $missing }»; numere la lista a partir de 1 y sin saltos
# $here, $first: números de líneas.
file-fault-lists-differ = { $here ->
        [one] aquí hay { $here } línea, pero en el primer idioma hay { $first }; los dos deben decir lo mismo
       *[other] aquí hay { $here } líneas, pero en el primer idioma hay { $first }; los dos deben decir lo mismo
    }
# $lang: un código como es. $all: los códigos de todos los idiomas, unidos con comas.
file-fault-missing-language = faltan los textos en «{ $lang }»; cada ejercicio necesita textos en: { $all }
file-fault-texts-twice = hay textos aquí y en los archivos de idioma que acompañan a este archivo; déjelos en un solo lugar
# $expected: nombre de un archivo.
file-fault-no-exercise = pertenece a { $expected }, que no está en esta carpeta
# $endings: por ejemplo .en.ftl, .es.ftl
file-fault-no-language = un archivo de idioma lleva el nombre de su archivo de ejercicio con otra terminación en lugar de .toml: { $endings }
# $character: por ejemplo U+202E.
file-fault-unprintable = el carácter { $character } no se puede mostrar; aquí se espera texto sin formato en una sola línea
file-fault-balance-needs = cada nivel de un ejercicio de equilibrio necesita «surface» y «eyes»
file-fault-sides-of-ladder = todos los niveles de un mismo «ladder» se hacen con los mismos lados; un nivel con otros lados va en un «ladder» propio
file-fault-sides-of-kind = un ejercicio de este «kind» tiene otros lados: los intentos sobre una pierna se hacen «each-side», y lo que se hace con los dos pies o con todo el cuerpo lleva «none»
file-fault-error-of-count = solo lo lleva un ejercicio con «kind» «count»
file-fault-step-of-test = una prueba se hace siempre igual, así que no lleva «step»
file-fault-same-id = otro archivo de esta carpeta tiene el mismo id, «{ $id }»
file-fault-reserved-id = los id que empiezan por «own-» los da el programa; elija otro
# $most (Number)
file-fault-own-id-too-long = el id de un ejercicio propio tiene hasta { $most } caracteres
file-fault-shipped-id = «{ $id }» es un ejercicio de este programa; un ejercicio propio necesita otro id
# $found (Number): revisiones del ejercicio.
# $have (Number)
file-fault-old-revision = es distinto de la revisión { $have }, que usted tiene o ha puesto en una tarjeta, pero su revisión es solo la { $found }; póngale una más alta

## Un plan

file-fault-weight = aquí se espera un peso de 0.25 a 100 en cuartos de kilogramo, como 2.25
file-fault-days = aquí se espera "workdays", "every-day", una lista con mon, tue, wed, thu, fri, sat, sun o una tabla con every = 2 o times_a_week = 3
file-fault-alarm-name = aquí se espera el nombre de una alarma, como "0123456789abcdef:42"

## Sesiones

# $most: un número.
file-fault-too-many-parts = una sesión tiene hasta { $most } repeticiones, series o intentos
file-fault-failed-count = «failed» debe tener tantos números como «done»
file-fault-phone-without-trials = «phone» solo se puede usar junto con «trials»
file-fault-no-such-item = el plan no tiene ese ejercicio, esa molestia o esa actividad, o el ejercicio es de otro tipo
file-fault-no-open-slot = a esa hora no hay ninguna sesión abierta de este ejercicio, o ya está hecha
file-fault-paused = a esa hora este ejercicio está suspendido por seguridad
file-fault-days-outside-plan = los días deben estar entre el inicio del plan y la próxima visita, el primero antes que el último

## La tabla de tiempos publicados de una clínica

# $most: un número.
file-fault-row-count = la tabla necesita entre 1 y { $most } filas, cada una bajo [[row]]
# $most: un número de caracteres.
file-fault-source = «source» debe decir de dónde son las cifras, con 1 a { $most } caracteres en una línea
file-fault-sd-without-mean = «sd» solo se puede usar junto con «mean»
file-fault-ages = aquí se esperan años enteros como "60-69" u "80-plus"
file-fault-ages-reversed = las edades de esta fila están al revés; escriba primero la menor, como "60-69"
# $most: un número de intentos.
file-fault-statistic = aquí se espera best-of-3, mean-of-3, median-of-3 o lo mismo con otro número entre 1 y { $most }
file-fault-cap = aquí se esperan segundos enteros entre { $least } y { $most }, o "none"
file-fault-above-cap = la media o la mediana de esta fila supera su tiempo máximo
file-fault-firm-only = aquí solo se permite "firm", porque las superficies blandas difieren demasiado para una tabla

## Una tabla de números (valores separados por comas)

file-fault-csv-empty = el archivo está vacío; su primera línea debe ser { $header }
file-fault-csv-header = la primera línea debe ser { $header }, pero es «{ $found }»
file-fault-csv-byte-order-mark = el archivo empieza con una marca de orden de bytes; guárdelo como UTF-8 sin ella
# $most: un número.
file-fault-csv-rows = el archivo tiene más de { $most } filas
file-fault-csv-separator = entre las columnas se esperan comas, pero hay «{ $found }»
file-fault-csv-tab = entre las columnas se esperan comas, pero hay un tabulador
# $most: un número de bytes.
file-fault-csv-line-length = esta línea tiene más de { $most } bytes
# $columns: un número.
file-fault-csv-empty-line = { $columns ->
        [one] esta línea está vacía; se espera { $columns } columna
       *[other] esta línea está vacía; se esperan { $columns } columnas
    }
# $columns, $found: números.
file-fault-csv-columns = { $columns ->
        [one] se espera { $columns } columna, pero hay { $found }
       *[other] se esperan { $columns } columnas, pero hay { $found }
    }
# $column: nombre de la columna en la primera línea.
file-fault-csv-number = columna { $column }: se espera un número con punto decimal, pero hay «{ $found }»
file-fault-csv-finite = columna { $column }: se espera un número finito
file-fault-csv-day = columna { $column }: se espera un número entero o una fecha como 2026-03-01, pero hay «{ $found }»
file-fault-csv-mixed-days = columna { $column }: use números o fechas, no ambos
file-fault-csv-day-order = columna { $column }: el día debe ser posterior al de la línea anterior, con un valor por día

## Una carpeta con archivos de ejercicio

file-fault-no-exercise-file = no contiene ningún archivo de ejercicio; sus nombres terminan en .toml

## Límite del tamaño de un archivo

size-megabytes = { $n } MB
size-kilobytes = { $n } kB
size-bytes = { $n ->
        [one] { $n } byte
       *[other] { $n } bytes
    }
