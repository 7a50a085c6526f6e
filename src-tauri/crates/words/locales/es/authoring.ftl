## Clinic: own exercises and sets, listed

# The page with exercises that the clinic wrote itself, and with its sets; also the link to it.
own-title = Sus ejercicios y conjuntos
own-exercises = Ejercicios que usted ha escrito
own-what = Se ofrecen junto a los del programa al hacer un plan. Lo que dice un ejercicio es responsabilidad de usted, dentro de su habilitación y de las normas locales.
own-none = Todavía ninguno. Lo más rápido es empezar con una copia.
own-new-blank = Empezar de cero
own-new-copy = Empezar con una copia
own-copy-of = Copiar un ejercicio
own-copy-find = Buscar un ejercicio para copiarlo
# $name: the name of an exercise.
own-copy-this = Copiar { $name }
own-import = Añadir desde archivos
own-change = Cambiar
own-save-file = Guardar como archivo
own-remove = Quitar
own-unfinished = Sin terminar
own-go-on = Seguir escribiendo
own-discard = Borrar
own-no-name = Todavía sin nombre
own-unreadable = Esta versión del programa no puede leerlo
# $language: the language that the texts are in, for example "English".
own-in-one-language = Solo en { $language }: todos lo leen en ese idioma
# $n: the revision of an exercise.
own-revision = Revisión { $n }
# $codes: the codes of patients.
own-on-plans = En la última tarjeta de { $codes }
own-not-offered = Quitado; se conserva porque está en una tarjeta
# $name: the name of an exercise.
own-remove-sure = ¿Quitar { $name }? Quienes lo tienen en una tarjeta lo conservan. Ya no se ofrece para planes nuevos.
own-removed = { $name } se ha quitado.
own-removed-kept = { $name } ya no se ofrece. Se conserva porque está en una tarjeta.
own-saved = { $name } está guardado. Lo encontrará al hacer un plan.
sets = Conjuntos de ejercicios
sets-what = Lo que receta a menudo, con un nombre suyo. Para guardar un conjunto, haga un plan y pulse allí «Guardar como conjunto».
sets-none = Todavía ninguno.
# $n: the number of exercises in a set.
sets-exercises = { $n ->
        [one] { $n } ejercicio
       *[other] { $n } ejercicios
    }
set-remove-sure = ¿Quitar el conjunto { $name }? Los planes hechos con él se conservan.
# On the page of a plan: the folded section with the sets.
set-start = Conjuntos de ejercicios
set-start-what = Añade a este plan los ejercicios de un conjunto, con sus dosis y horas.
# $name: what the clinic calls a set.
set-add = Añadir el conjunto { $name }
set-save = Guardar como conjunto
set-save-name = Nombre del conjunto
set-save-what = Guarda estos ejercicios con sus dosis y horas. No contiene nada sobre el paciente.
# $name: what the clinic calls a set.
set-kept = El conjunto { $name } está guardado.
# $names: exercises of a set that were not put into a plan.
set-left-out = No cabían o ya no existen: { $names }
# In the catalogue beside a plan.
own-write-one = Escribir uno propio

## Clinic: an exercise while it is written

write-new = Ejercicio nuevo
write-undo = Deshacer
write-redo = Rehacer
write-save = Guardar ejercicio
write-kept = Lo que escribe se conserva como «sin terminar» hasta que lo guarde.
write-ready = No falta nada.
write-missing = Antes de poder guardarlo:
# $fields: the names of empty fields, for example "Purpose and Steps".
write-empty = Falta por escribir: { $fields }
# The same for a second language. $language: for example "Spanish".
write-empty-in = Falta por escribir en { $language }: { $fields }
write-same-name = Otro ejercicio tiene este nombre.
# $place: a field; $lack: what is wrong there.
write-lack-at = { $place }: { $lack }
# $found, $most: numbers of characters.
# $found (Number)
write-too-long = { $found } caracteres; caben hasta { $most }
# $line: the number of an entry in a list, from 1.
write-line-too-long = la línea { $line } tiene { $found } caracteres; caben hasta { $most }
write-too-many = { $found } líneas; se muestran hasta { $most }
write-unequal = { $found } líneas, pero { $first } en el otro idioma
write-no-conditions = elija sobre qué se está de pie y si los ojos están abiertos
write-unlike-sides = todos los niveles deben hacerse con los mismos lados
# $level: the name of a level or its number; $part: a text of it.
write-level-part = { $level }, { $part }
write-in-language = { $place } ({ $language })
write-lines-hint = Uno por línea.
write-name-hint = Tal como lo leen los pacientes.
write-steps-hint = Una acción por línea, hasta ocho.
write-stop-hint = Uno por línea. Primero lo urgente.
write-texts = Lo que lee el paciente
write-name = Nombre
write-purpose = Para qué sirve
write-set-up = Posición inicial
write-steps = Pasos
write-should-feel = Qué debe notarse
write-should-not-feel = Qué no debe notarse
write-mistakes = Errores frecuentes
write-cautions = Tener cuidado o preguntar antes
write-stop-signs = Parar enseguida
write-language = Idioma de los textos
# $language: a language in which nothing is written yet.
write-not-yet = { $language } (nada todavía)
write-one-language = No hace falta un segundo idioma. Sin él, todos leen el primero.
write-what-it-is = Qué es
write-region = Parte del cuerpo
write-kind = Cómo se mide
write-sides = Lados
write-side-none = Sin lados
write-side-each = Un lado después del otro
write-side-alternating = Izquierda y derecha por turnos
write-posture = Postura
write-test = Es una prueba: se hace siempre igual y nunca se hace más difícil
write-dose = Dosis habitual
write-prescriber = Para quien lo receta
write-purposes = Para qué se hace
write-flags = Pensar en esto antes de recetarlo
write-equipment = Qué se necesita
write-levels = Niveles
write-levels-what = Versiones de fácil a difícil. De una a la siguiente cambia una sola cosa.
write-level-only = Un nivel. A los pacientes solo se les habla de niveles si hay varios.
# $n: the place of a level, from 1.
write-level-n = Nivel { $n }
write-level-name = Nombre del nivel
write-level-change = Qué es distinto aquí
write-level-set-up = Su propia posición inicial, si es distinta
write-level-steps = Sus propios pasos, si son distintos
write-level-dose = Una dosis propia
write-level-figure = Una figura propia
write-level-add = Añadir un nivel
write-level-remove = Quitar este nivel
write-level-easier = Hacer más fácil
write-level-harder = Hacer más difícil
write-level-surface = De pie sobre
write-level-eyes = Ojos
write-factor = Qué cambia de nivel a nivel
factor-surface = la superficie
factor-base = la separación de los pies
factor-support = en qué se apoya o se agarra
factor-lever = la longitud de la palanca
factor-range = hasta dónde va el movimiento
factor-load = el peso
factor-position = la posición del cuerpo

## Clinic: the figure of an exercise while it is written

draw-figure = Figura
draw-what = Arrastre un punto de la figura o mueva los controles. La imagen de al lado muestra todo el movimiento.
draw-no-handles = En esta vista solo los controles mueven la figura.
draw-like = Empezar con la figura de
draw-like-choose = Elija un ejercicio
draw-of = Figura de
draw-of-exercise = el ejercicio
draw-position = Posición
draw-start = Inicio
draw-end = Final
# $n: the number of a position between start and end, from 1.
draw-middle = Intermedia { $n }
draw-add = Añadir una posición
draw-remove = Quitar esta posición
draw-copy-start = Como al inicio
# Explains "near" and "far" in the names of joints and contacts.
draw-near-far = «Cercano» es el lado del cuerpo hacia usted, de frente su derecha; «lejano» es el otro.
draw-view = Vista desde
draw-plumb = Mostrar la plomada
draw-angles = Articulaciones
draw-more-joints = Más articulaciones
# $degrees: an angle.
draw-degrees = { $degrees }°
draw-things = Objetos alrededor
draw-contacts = Qué toca algo que no se mueve
draw-anchor = Qué queda en su sitio
draw-arrow = Flecha
draw-arrow-along = Flecha según el movimiento
draw-arrow-none = Sin flecha
draw-arrow-right = A la derecha (cm)
draw-arrow-up = Hacia arriba (cm)
draw-arrow-toward = Dirección (°)
draw-arrow-length = Longitud (cm)
draw-arrow-bend = Curva (°)
draw-arrow-at = Junto a
draw-still = Nada se mueve lo bastante para una flecha.
draw-ties = Banda, correa o bastón
draw-tie = Qué
draw-tie-from = Desde
draw-tie-to = Hasta
draw-tie-add = Añadir
draw-tie-remove = Quitar
draw-preview = Lo que ve el paciente
draw-light = Claro
draw-dark = Oscuro
view-side = el lado
view-front = delante
view-hand = cerca: la mano, por el pulgar
view-oblique = delante, tumbado de lado
view-palm = cerca: la palma
view-fist = cerca: el puño
view-head = cerca: la cabeza
view-feet = cerca: los pies desde arriba
view-foot = cerca: el pie por dentro
view-above = arriba, tumbado boca arriba
thing-chair = silla
thing-worktop = encimera
thing-wall = pared detrás
thing-mat = esterilla
thing-pillow = almohada bajo la cabeza
thing-folded-towel = toalla doblada
thing-cushion = cojín bajo el pie
thing-foam = espuma bajo el pie
thing-table = mesa
thing-bag = bolsa en la mano
thing-wall-ahead = pared delante
thing-wall-beside = pared al lado
thing-doorway = marco de puerta
thing-door = puerta con banda
thing-step = escalón
thing-handrail = pasamanos
thing-weight = peso en la mano
thing-hammer = martillo en la mano
thing-towel-roll = toalla enrollada
thing-rubber-band = goma alrededor de los dedos
thing-mark = marca en la pared
# The figure's near side is the one that is seen first; its far side lies behind.
contact-seat = asiento
contact-upper-back = parte alta de la espalda
contact-far-side = lado lejano del cuerpo
contact-near-sole = planta del pie cercano
contact-far-sole = planta del pie lejano
contact-near-toes = antepié cercano
contact-far-toes = antepié lejano
contact-near-heel = talón cercano
contact-far-heel = talón lejano
contact-near-hand = mano cercana
contact-far-hand = mano lejana
contact-near-hand-slides = mano cercana, deslizándose
contact-far-hand-slides = mano lejana, deslizándose
contact-near-heel-slides = talón cercano, deslizándose
contact-low-back = zona lumbar
contact-front = parte delantera de la pelvis
contact-near-knee = rodilla cercana
contact-far-knee = rodilla lejana
contact-far-elbow = codo lejano
end-near-hand = mano cercana
end-far-hand = mano lejana
end-near-thigh = muslo cercano
end-far-thigh = muslo lejano
end-near-ankle = tobillo cercano
end-far-ankle = tobillo lejano
end-near-foot = pie cercano
end-far-foot = pie lejano
end-head = nuca
end-pelvis = pelvis
end-door = puerta
tie-band = banda
tie-strap = correa
tie-stick = bastón
mark-chin = barbilla
mark-crown = coronilla
mark-shoulder = hombro
mark-elbow = codo
mark-hand = mano
mark-pelvis = pelvis
mark-knee = rodilla
mark-heel = talón
mark-toes = dedos del pie
joint-trunk = Tronco, hacia delante
joint-trunk-side = Tronco, de lado
joint-back = Espalda redondeada
joint-back-side = Espalda, inclinada de lado
joint-back-turn = Espalda, girada
joint-neck = Cuello, hacia delante
joint-head = Cabeza, asintiendo
joint-neck-side = Cuello, de lado
joint-head-turn = Cabeza, girada
joint-jaw = Boca abierta
joint-blades = Omóplatos juntos
joint-shrug = Hombros arriba
joint-shoulder-near = Brazo cercano, adelante
joint-shoulder-far = Brazo lejano, adelante
joint-shoulder-out-near = Brazo cercano, afuera
joint-shoulder-out-far = Brazo lejano, afuera
joint-shoulder-turn-near = Brazo cercano, girado adentro
joint-shoulder-turn-far = Brazo lejano, girado adentro
joint-elbow-near = Codo cercano
joint-elbow-far = Codo lejano
joint-wrist-near = Muñeca cercana
joint-wrist-far = Muñeca lejana
joint-forearm-turn = Antebrazo, girado
joint-hip-near = Cadera cercana
joint-hip-far = Cadera lejana
joint-hip-out-near = Pierna cercana, afuera
joint-hip-out-far = Pierna lejana, afuera
joint-hip-turn-near = Muslo cercano, girado afuera
joint-hip-turn-far = Muslo lejano, girado afuera
joint-knee-near = Rodilla cercana
joint-knee-far = Rodilla lejana
joint-ankle-near = Pie cercano, arriba
joint-ankle-far = Pie lejano, arriba
joint-forearm = Antebrazo, levantado
joint-knuckles = Nudillos
joint-middle-joints = Articulaciones medias
joint-end-joints = Articulaciones finales
joint-thumb = Pulgar
joint-spread = Dedos separados
joint-index = Índice
joint-middle = Dedo medio
joint-ring = Anular
joint-little = Meñique
joint-foot-out = Antepié, hacia fuera
joint-arch = Arco, levantado
