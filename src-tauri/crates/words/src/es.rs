//! Spanish.

use crate::Key;

/// What each key says.
pub fn text(key: Key) -> &'static str {
    match key {
        Key::AppName => "Carryover",
        Key::Yes => "Sí",
        Key::No => "No",
        Key::Cancel => "Cancelar",
        Key::Back => "Atrás",
        Key::Continue => "Continuar",
        Key::Close => "Cerrar",
        Key::Save => "Guardar",
        Key::ChooseSide => "¿Qué hará usted aquí?",
        Key::SidePatient => "Hago ejercicios",
        Key::SidePatientWhat => {
            "Reciba la tarjeta de su clínica, los avisos y la guía, y lleve un resumen sellado a la próxima visita."
        }
        Key::SideClinic => "Prescribo ejercicios",
        Key::SideClinicWhat => "Haga planes, entréguelos en una tarjeta y lea lo que vuelve.",
        Key::SideWarning => "En el ordenador de una empresa, quien lo administra puede leer lo que usted anote aquí.",
        Key::AtIsSet => "La hora está fijada en {time}",

        Key::Left => "izquierda",
        Key::Right => "derecha",
        Key::LeftSide => "lado izquierdo",
        Key::RightSide => "lado derecho",
        Key::BothSides => "ambos lados",
        Key::LeftLeg => "pierna izquierda",
        Key::RightLeg => "pierna derecha",
        Key::EyesOpen => "ojos abiertos",
        Key::EyesClosed => "ojos cerrados",
        Key::Firm => "suelo firme",
        Key::FoldedTowel => "toalla doblada",
        Key::Cushion => "cojín",
        Key::Foam => "espuma",

        Key::DoseHold => "{n|# vez|# veces} {s} segundos",
        Key::DoseReps => "{n|# repetición|# repeticiones}",
        Key::DoseRepsSets => "{sets|# serie|# series} de {n|# repetición|# repeticiones}",
        Key::DoseBalance => "{n|# intento|# intentos} de hasta {s} segundos",
        Key::EveryMinutes => "cada {n} minutos de {from} a {to}",
        Key::EveryHour => "cada hora de {from} a {to}",
        Key::AtTimes => "a las {times}",
        Key::Workdays => "de lunes a viernes",
        Key::EveryDay => "todos los días",
        Key::NoDay => "ningún día elegido",
        Key::Monday => "lunes",
        Key::Tuesday => "martes",
        Key::Wednesday => "miércoles",
        Key::Thursday => "jueves",
        Key::Friday => "viernes",
        Key::Saturday => "sábado",
        Key::Sunday => "domingo",
        Key::AboutSeconds => "Unos {n} segundos",
        Key::AboutMinutes => "{n|Alrededor de un minuto|Unos # minutos}",

        Key::MarkDone => "hecho entero",
        Key::MarkPartly => "{done} de {of}",
        Key::MarkLeftOut => "omitido: {reason}",
        Key::MarkExcused => "dispensado: {reason}",
        Key::MarkHeldBack => "retenido",
        Key::MarkPassedBy => "pasó de largo",
        Key::MarkDue => "toca ahora",
        Key::MarkToCome => "por venir",
        Key::MarkNoSuchHour => "esta hora no existe hoy",

        Key::BarrierForgot => "lo olvidé",
        Key::BarrierNoTime => "sin tiempo, no pude apartarme",
        Key::BarrierNoPlace => "no estaba en un sitio adecuado",
        Key::BarrierPain => "dolía, o temía que doliera",
        Key::BarrierNotSureHow => "no sé bien cómo",
        Key::BarrierFeltFine => "me sentía bien, no hacía falta",
        Key::BarrierNoHelp => "no parecía ayudar",
        Key::BarrierUnwell => "cansancio o malestar",
        Key::BarrierNoSupport => "sin apoyo o espacio cerca",
        Key::BarrierOther => "otra cosa",
        Key::BarrierRatherNotSay => "prefiero no decirlo",
        Key::ExcuseIll => "enfermedad",
        Key::ExcuseTravelling => "viaje",
        Key::ExcuseHoliday => "vacaciones",
        Key::ExcuseOther => "otro motivo",

        Key::TroubleHeartOrBreath => "Dolor en el pecho, falta de aire, desmayo, sudor frío",
        Key::TroubleHeadOrNeck => "Dolor de cabeza o cuello súbito e inusual, visión doble, habla torpe, cara dormida",
        Key::TroubleNerve => "Debilidad o entumecimiento nuevos en un brazo o una pierna",
        Key::TroubleBladderOrBowel => {
            "Entumecimiento entre las piernas, problemas nuevos de vejiga o intestino, ambas piernas débiles"
        }
        Key::TroubleFell => "Me caí",
        Key::TroubleNearlyFell => "Casi me caigo",
        Key::TroubleTooMuchPain => "Demasiado dolor",
        Key::TroubleOther => "Otra cosa va mal",

        Key::AftercareSoreness => "Una molestia leve durante uno o dos días es habitual.",
        Key::AftercareMoving => "Siga moviéndose como siempre, sin forzar.",
        Key::AftercareEasy => "Nada de pesos ni deporte hasta pasado mañana.",
        Key::AftercareWarmth => "Puede usar calor si le resulta agradable.",
        Key::AftercareContact => {
            "Si el dolor crece, o hay entumecimiento o debilidad nuevos, contacte con su clínica; si es urgente, con el número local de emergencias."
        }

        Key::ReminderTitle => "Hora de una pausa breve",
        Key::ReminderBody => "{takes}.",
        Key::ReminderOpen => "Abrir",
        Key::ReminderLater => "En 10 minutos",
        Key::ReminderLeaveOut => "Omitir",
        Key::Quit => "Salir",

        // terminal
        Key::IdentityWarning => {
            "Quien tenga esta clave puede leer todos los resúmenes sellados para esta clínica. Guárdela fuera de línea, y solo si la necesita."
        }
        Key::ReceiptNew => "{file}: {code}, {days|# día nuevo|# días nuevos}.",
        Key::ReceiptFilled => "{file}: {code}, {days|# día conocido|# días conocidos} mejor que antes.",
        Key::ReceiptFilledOther => "{file}: {code}, ningún día nuevo; se añadió una nota u otros detalles.",
        Key::ReceiptKnown => "{file}: {code}, nada nuevo; no se cambió nada.",

        // clinic: door
        Key::ClinicDoorStart => "Prepare su clínica",
        Key::ClinicDoorStartWhat => {
            "Las tarjetas las firma esta clínica y los resúmenes se sellan para ella. Sus llaves quedan en este ordenador, cerradas con una frase de paso."
        }
        Key::ClinicName => "Nombre de la clínica",
        Key::ClinicNameHint => "Los pacientes lo ven en su pantalla.",
        Key::Passphrase => "Frase de paso",
        Key::PassphraseAgain => "La frase de paso otra vez",
        Key::PassphraseHint => "12 caracteres o más. Varias palabras sirven bien.",
        Key::PassphraseShow => "Mostrar la frase de paso",
        Key::PassphraseDiffers => "Las dos no son iguales.",
        Key::PassphraseLost => {
            "Una frase de paso perdida no se puede recuperar. Sin ella nadie puede volver a abrir los planes y resúmenes de esta clínica, ni usted ni nosotros. Apúntela y guárdela bajo llave."
        }
        Key::ClinicStart => "Preparar la clínica",
        Key::ClinicDoorOpen => "Abrir el archivo de la clínica",
        Key::ClinicDoorOpenWhat => "Los pacientes, planes y resúmenes que guarda están sellados hasta entonces.",
        Key::ClinicOpen => "Abrir",
        Key::ClinicOpening => "Tarda un momento.",
        Key::Fingerprint => "Huella",
        Key::FingerprintWhat => "La pantalla del paciente muestra la misma al recibir la tarjeta.",

        // clinic: patients
        Key::Patients => "Pacientes",
        Key::PatientsNone => "Aún no hay pacientes. Añada uno con un código que usted elija, como el número de su historia.",
        Key::PatientsFind => "Buscar por código o nombre",
        Key::PatientAdd => "Añadir paciente",
        Key::PatientCode => "Código",
        Key::PatientCodeHint => "De 1 a 12 letras, cifras y guiones.",
        Key::PatientName => "Nombre (puede quedar vacío)",
        Key::PatientNameHint => "Queda en este archivo; nunca va en una tarjeta ni en un resumen.",
        Key::ReceiveSummaries => "Recibir resúmenes",
        Key::ReceiveWhat => {
            "Elija los archivos que los pacientes guardaron para la visita, o fotos de los códigos que mostraron; varios a la vez si quiere."
        }
        Key::ChooseFiles => "Elegir archivos",
        Key::ReviewOn => "revisión el {date}",
        Key::ReviewToday => "revisión hoy",
        Key::ReviewWas => "la revisión era el {date}",
        Key::PlanNone => "aún sin plan",
        Key::SummaryUntil => "resumen hasta el {date}",
        Key::SummaryNone => "aún sin resumen",
        Key::AlarmsOpen => "{n|# alarma|# alarmas} sin levantar",

        // clinic: plan
        Key::PlanFirst => "Primer plan",
        Key::PlanNext => "Plan siguiente",
        Key::PlanReview => "Revisión",
        Key::PlanOf => "Plan {revision} para {who}",
        Key::PlanCarried => "Continúa el plan {revision}.",
        Key::PlanDay => "Un día completo: {n|# vez|# veces}, {takes}.",
        Key::PlanEmpty => "Aún no hay nada en el plan. Pulse un ejercicio para añadirlo con su dosis habitual.",
        Key::ProposalsTake => "Aceptar todas las propuestas",
        Key::Proposed => "propuesto",
        Key::StopTakesOut => "lo quita de este plan",
        Key::TakeOut => "Quitar",
        Key::MoveUp => "Subir",
        Key::MoveDown => "Bajar",
        Key::MoreOfItem => "Horas, límites, nota",
        Key::Catalogue => "Ejercicios",
        Key::CatalogueFind => "Buscar un ejercicio",
        Key::CatalogueNone => "Ningún ejercicio tiene esas palabras.",
        Key::CatalogueAdd => "Añadir {name}",
        Key::InPlan => "en el plan",
        Key::RegionNeckUpperBack => "Cuello y espalda alta",
        Key::RegionShoulder => "Hombro",
        Key::RegionWristHand => "Muñeca y mano",
        Key::RegionLowBack => "Zona lumbar",
        Key::RegionHip => "Cadera",
        Key::RegionKnee => "Rodilla",
        Key::RegionAnkle => "Tobillo y pie",
        Key::Rung => "Peldaño",
        Key::SideLabel => "Lado",
        Key::DoseHolds => "Veces",
        Key::DoseHoldSeconds => "Segundos cada una",
        Key::DoseRest => "Pausa, segundos",
        Key::DoseTrials => "Intentos",
        Key::DoseTarget => "Hasta, segundos",
        Key::DoseSets => "Series",
        Key::DoseRepetitions => "Repeticiones",
        Key::DoseTempoUp => "Ida, segundos",
        Key::DoseTempoHold => "Quieto, segundos",
        Key::DoseTempoDown => "Vuelta, segundos",
        Key::StepLess => "{what}: menos",
        Key::StepMore => "{what}: más",
        Key::When => "Cuándo",
        Key::WhenEvery => "Cada cierto tiempo",
        Key::WhenAt => "A horas fijas",
        Key::EveryLabel => "Cada",
        Key::EveryOption => "{n} minutos",
        Key::FromLabel => "De",
        Key::ToLabel => "A",
        Key::TimesLabel => "Horas",
        Key::TimesHint => "Por ejemplo 8:00, 13:00, 18:00.",
        Key::DaysLabel => "Días",
        Key::PainLimit => "Límite de dolor",
        Key::PainLimitHint => "Por encima el paciente para, y aquí aparece como alarma.",
        Key::MayStep => "Puede proponer el paso siguiente por sí solo",
        Key::MayStepHint => "Según las mismas reglas, como mucho un paso por semana. Si no, solo lo cambia usted.",
        Key::ServesLabel => "Sirve para",
        Key::ServesNone => "ninguna molestia en particular",
        Key::NoteLabel => "Nota para el paciente",
        Key::NoteCount => "{n} de {most} caracteres",
        Key::Complaints => "Molestias",
        Key::ComplaintAdd => "Añadir molestia",
        Key::ComplaintName => "Qué duele",
        Key::SideNone => "sin lado",
        Key::PainToday => "Dolor hoy",
        Key::NotAsked => "sin preguntar",
        Key::Activities => "Actividades que nombra el paciente",
        Key::ActivityAdd => "Añadir actividad",
        Key::ActivityName => "Difícil de hacer, en palabras del paciente",
        Key::RatingToday => "Hoy, de 0 a 10",
        Key::BalanceAtHome => "Equilibrio en casa",
        Key::BalanceAtHomeWhat => {
            "La práctica a solas necesita estas tres cosas. Las normas locales y su propio criterio van primero."
        }
        Key::AgeBand => "Edad",
        Key::AgeUnder18 => "menos de 18",
        Key::AgeBetween => "{from} a {to}",
        Key::AgeFrom80 => "80 y más",
        Key::AgeNone => "elija",
        Key::RiskTitle => "Considerado y ausente",
        Key::StanceToday => "Segundos sobre una pierna hoy, ojos abiertos, suelo firme",
        Key::StanceCapped => "lo terminó usted, no el pie",
        Key::StanceEarlier => "antes {s} s",
        Key::Aftercare => "Para los dos primeros días",
        Key::AftercareOwn => "Una línea propia",
        Key::NextVisit => "Próxima visita",
        Key::InWeeks => "{n|# semana|# semanas}",
        Key::DateLabel => "Fecha",
        Key::AlarmsToClear => "Alarmas por levantar",
        Key::AlarmClear => "Levantarla con esta tarjeta",
        Key::AlarmClearWhat => "Lo que no se levante sigue retenido en el lado del paciente.",
        Key::IssueCard => "Emitir la tarjeta",
        Key::IssueNotYet => "Antes de poder emitirla",
        Key::IssueReady => "Nada lo impide.",
        Key::PlanFull => "En un plan caben como máximo {most} ejercicios. Quite uno para añadir otro.",
        Key::NamedFull => "Se pueden anotar {most} como máximo.",
        Key::OverMidnight => "Esto pasa por la noche: desde las {from} hasta las {to} del día siguiente.",
        Key::RoundTheClock => "Esto dura las 24 horas, de día y de noche, desde las {from}.",
        Key::UnreadTimes => "No se entienden las horas «{typed}»; escríbalas como 8:00, 13:00, 18:00.",
        Key::UnreadTimesNone => "Falta la hora; escriba las horas como 8:00, 13:00, 18:00.",
        Key::UnreadStance => "«{typed}» no es un número de segundos de 0 a 600; escríbalo como 12,4.",
        Key::UnreadVisit => "Falta la fecha de la próxima visita.",
        Key::UnreadHere => "{where}: {what}",
        Key::DraftResumed => "Se retoma el borrador del {date}.",
        Key::DraftResumedAnew => {
            "Se retoma el borrador del {date}. Hoy se pregunta de nuevo qué desaconseja el equilibrio y los segundos sobre una pierna."
        }
        Key::DraftDiscard => "Descartar el borrador",
        Key::DraftDiscardAsk => "¿Descartar todo lo que se cambió en este borrador?",
        Key::DraftDiscardYes => "Sí, descartarlo",
        Key::DraftDiscardNo => "No, conservarlo",
        Key::FoldNone => "ninguna",
        Key::FoldLines => "{n|# línea|# líneas}",

        // clinic: what a plan lacks
        Key::ProblemUnknown => "El catálogo de este programa no lo tiene en esta edición.",
        Key::ProblemRung => "Elija un peldaño.",
        Key::ProblemDose => "La dosis está fuera de los límites.",
        Key::ProblemSide => "Elija un lado.",
        Key::ProblemSchedule => "Elija al menos un día y una hora.",
        Key::ProblemServes => "Sirve a una molestia que el plan ya no tiene.",
        Key::ProblemStance => "Faltan los segundos de hoy sobre una pierna para un lado prescrito.",
        Key::ProblemStanceShort => "Menos de cinco segundos con ojos abiertos: no para practicar a solas.",
        Key::ProblemGate => {
            "Una superficie más blanda o los ojos cerrados esperan a 30 s con ojos abiertos en suelo firme, hoy y en una visita anterior."
        }
        Key::ProblemSoftClosed => "Desde los 65 años, nada de superficie blanda con ojos cerrados a solas.",
        Key::ProblemTicks => "{n|# línea|# líneas} de la lista sin marcar.",

        // clinic: issued
        Key::IssuedTitle => "Tarjeta del plan para {who}",
        Key::IssuedRevision => "plan {revision}",
        Key::IssuedWhat => "El paciente fotografía el código, o recibe la imagen, el texto o el archivo.",
        Key::IssuedWarning => "Quien fotografíe esta tarjeta puede usarla. Muéstrela solo al paciente.",
        Key::IssuedCode => "La tarjeta como código",
        Key::IssuedText => "La tarjeta como texto",
        Key::IssuedCopy => "Copiar el texto",
        Key::IssuedCopied => "Copiado.",
        Key::IssuedFiles => "Guardada en",
        Key::IssuedVersion => "QR versión {n}",
        Key::IssuedTooLarge => "Demasiado grande para un código. Entregue el archivo o el texto.",

        // clinic: review
        Key::ReviewEmpty => {
            "En la visita el paciente abre Registro, guarda un resumen sellado y entrega el archivo. Recíbalo aquí."
        }
        Key::ReviewFigures => "Más cifras",
        Key::ReviewOther => "Otras condiciones y tiempos en las visitas",
        Key::ChartDays => "{name}, día por día",
        Key::ChartLine => "{name}, de 0 a 10 por día",
        Key::ChartStance => "Segundos por día, ambas piernas",
        Key::ChartAtVisit => "valorado en la visita",

        // patient: places
        Key::PlacesLabel => "Lugares",
        Key::PlaceNow => "Ahora",
        Key::PlacePlan => "Plan",
        Key::PlaceRecord => "Registro",
        Key::SomethingWrong => "Algo va mal",
        Key::SideStays => "Este dispositivo guarda la elección.",

        // patient: now
        Key::Begin => "Empezar",
        Key::InTenMinutes => "En 10 minutos",
        Key::LeaveItOut => "Dejarlo",
        Key::HowToDoIt => "Cómo se hace",
        Key::HowToOf => "Cómo se hace: {name}",
        Key::DidItAlready => "Ya lo hice",
        Key::DueSoon => "Toca a las {time}; ya puede empezar.",
        Key::PutOffUntil => "Aplazado: aviso a las {time}.",
        Key::RemindsAt => "aviso a las {time}",
        Key::NothingNow => "Nada que hacer ahora",
        Key::NextAt => "Lo siguiente: {name}, a las {time}",
        Key::AheadMinutes => "En {n|un minuto|# minutos}.",
        Key::AheadHours => "En {n|una hora|# horas} más o menos.",
        Key::NextTomorrow => "Lo siguiente: mañana a las {time}.",
        Key::NextOn => "Lo siguiente: {day} a las {time}.",
        Key::AllDone => "Hecho por hoy",
        Key::DayOver => "Eso fue hoy",
        Key::DoneOf => "{done} de {of} hechos.",
        Key::DayOff => "Hoy no hay nada previsto",
        Key::DayExcused => "Hoy queda libre",
        Key::Over => "Este plan ha terminado",
        Key::OverWhat => "Duró hasta el {date}. Lleve su registro a la visita; una tarjeta nueva empieza el plan siguiente.",
        Key::Stopped => "Su plan está en pausa",
        Key::StoppedSince => "Usted dijo: {what}.",
        Key::OnlyNewCard => "Solo una tarjeta nueva de su clínica le permite seguir.",
        Key::WhatToDo => "Qué hacer",
        Key::RowNow => "ahora",
        Key::DayLabel => "Hoy, por horas",
        Key::AfterTheVisit => "Después de la visita",
        Key::NotNow => "Ahora no",
        Key::DoOneNow => "Hacer uno ahora",
        Key::WhichOne => "¿Cuál?",
        Key::ExtraWhat => "Si toca uno, cuenta para él; si no, es adicional.",
        Key::HeldBackSince => "Retenido desde que usted dijo: {what}.",
        Key::LeaveOutWhy => "¿Por qué dejarlo?",
        Key::LeaveOutDays => "Dejar días enteros",
        Key::LeaveOutDaysWhat => "No se pide nada ni llega ningún aviso. Su clínica ve que estos días quedaron libres.",
        Key::LastDayOff => "Desde hoy; último día libre",
        Key::OnlyToday => "hoy",
        Key::WhyDays => "¿Por qué?",
        Key::WhyDaysSaves => "¿Por qué? Al responder se guarda.",

        // patient: questions
        Key::HowDidItGo => "¿Cómo fue?",
        Key::AskPain => "Dolor ahora: {name}",
        Key::PainLeast => "ningún dolor",
        Key::PainMost => "el peor imaginable",
        Key::AskActivity => "¿Qué tal puede hacer esto: {name}?",
        Key::ActivityLeast => "no puedo",
        Key::ActivityMost => "como antes",
        Key::AskSettled => "Ayer le dolía: {name}. ¿Se había calmado esta mañana?",
        Key::RatherNotAnswer => "Prefiero no contestar",

        // patient: how
        Key::BeforeYouBegin => "Antes de empezar",
        Key::BeCareful => "Tenga cuidado",
        Key::StopAtOnce => "Pare enseguida si",
        Key::IfInDoubt => "Si no está seguro de que esto sea adecuado para usted, pregunte antes a su clínica.",
        Key::ReadBegin => "Lo he leído. Empezar",
        Key::OnThisRung => "En este paso: {change}",
        Key::Purpose => "Para qué sirve",
        Key::ShouldFeel => "Lo que debería notar",
        Key::ShouldNotFeel => "Lo que no debería notar",
        Key::Mistakes => "Errores frecuentes",
        Key::StopAbove => "Pare si el dolor pasa de {n} sobre 10.",

        // patient: a run
        Key::GetReady => "Prepárese",
        Key::Hold => "Mantenga",
        Key::Rest => "Descanse",
        Key::ChangeSides => "Descanse y cambie de lado",
        Key::Paused => "En pausa",
        Key::PausedAsleep => "En pausa: el aparato se durmió",
        Key::WhenReady => "Cuando esté listo",
        Key::BeatUp => "Vaya",
        Key::BeatKeep => "Quédese",
        Key::BeatDown => "Vuelva",
        Key::HoldOf => "Vez {n} de {of}",
        Key::NextHoldOf => "Luego: vez {n} de {of}",
        Key::SetOf => "Serie {n} de {of}",
        Key::NextSetOf => "Luego: serie {n} de {of}",
        Key::TryOf => "intento {n} de {of}",
        Key::PartOf => "{n} de {of}",
        Key::OfSo => "de {of}",
        Key::HalfWay => "A la mitad",
        Key::Pause => "Pausa",
        Key::GoOn => "Seguir",
        Key::Stop => "Parar",
        Key::MoreRest => "30 segundos más",
        Key::NextNow => "Seguir ya",
        Key::SoundOn => "Sonido: sí",
        Key::SoundVoice => "Sonido: con voz",
        Key::SoundOff => "Sonido: no",
        Key::ThatFailed => "Esa no salió",
        Key::TakeItBack => "Sí que salió",
        Key::Done => "Hecho",
        Key::StoppedHere => "Parado aquí",
        Key::DoneHolds => "{done} de {of|# vez|# veces} hasta el final.",
        Key::DoneReps => "{done} de {of|# repetición|# repeticiones}.",
        Key::DoneTries => "{done} de {of|# intento|# intentos}.",
        Key::DoneFailed => "{n} no salieron.",
        Key::PartsLabel => "Parte por parte",
        Key::PartHeld => "hasta el final",
        Key::PartHeldSo => "{s} de {of} s",
        Key::PartCounted => "{n} de {of}",
        Key::PartCutOff => "interrumpido, no medido",
        Key::PartNot => "no hecho",
        Key::SaveAgain => "Guardar otra vez",
        Key::CannotBeGuided => "Este ejercicio no se puede guiar: su dosis no encaja. Avise a su clínica.",

        // patient: balance
        Key::StandOnLeft => "Pierna izquierda",
        Key::StandOnRight => "Pierna derecha",
        Key::SupportNear => "Una encimera o una silla firme está al alcance; el suelo, despejado y seco.",
        Key::PhoneOnSupport => "Deje el teléfono encima.",
        Key::HandOverPhone => "Tenga una mano sobre la pantalla. Tóquela cuando baje el pie.",
        Key::WherePhone => "¿Dónde está el teléfono?",
        Key::OnTheSupport => "Sobre el apoyo",
        Key::OnTheSupportWhat => "Una mano encima; un toque termina el intento.",
        Key::AtTheBreastbone => "En el esternón",
        Key::AtTheBreastboneWhat => "Sujeto con una mano, plano. Se mide el balanceo; un toque termina el intento.",
        Key::InAPocket => "En un bolsillo a la cintura",
        Key::InAPocketWhat => "Pegado al cuerpo. Se mide el balanceo; se le pregunta después.",
        Key::NoMotionSensor => {
            "Este aparato no tiene un sensor de movimiento que se pueda leer: el teléfono queda sobre el apoyo."
        }
        Key::SensorNotAllowed => {
            "No se permitió el sensor de movimiento. Deje el teléfono sobre el apoyo, o permita el sensor en los ajustes del sistema."
        }
        Key::SensorSilent => "El sensor de movimiento no dio nada en el último intento. Vale el tiempo del toque.",
        Key::PhoneAtBreastbone => "Sujete el teléfono plano contra el esternón, con la pantalla hacia fuera.",
        Key::OtherHandNear => "Tenga la otra mano justo sobre el apoyo. Toque la pantalla cuando baje el pie.",
        Key::PhoneInPocket => {
            "Después de empezar, meta el teléfono derecho en un bolsillo ajustado a la cintura, con la pantalla hacia fuera."
        }
        Key::HandsNear => {
            "Brazos como le enseñaron, apoyo al alcance. Un sonido lo empieza y otro lo termina; luego se le pregunta."
        }
        Key::StandUntilSound => "Aguante hasta el sonido",
        Key::HoldAskedAfter => "Sujétese si lo necesita. Se le pregunta después.",
        Key::SeemsTouched => "Parece que el pie tocó el suelo. Toque la pantalla si fue así.",
        Key::AskTouchedAt => "¿Tocó el pie el suelo a los {s} segundos, más o menos?",
        Key::AskTouched => "¿Tocó el pie el suelo, o se sujetó?",
        Key::AskTouchedElse => "¿Tocó en otro momento, o se sujetó?",
        Key::AskTouchedWhen => "¿A los cuántos segundos, más o menos?",
        Key::NotSure => "No estoy seguro",
        Key::ToBeConfirmed => "por confirmar: puede que fueran {s} s",
        Key::ToBeConfirmedLeast => "por confirmar: puede que fueran {s} s o más",
        Key::SwayTitle => "Balanceo",
        Key::SwayFigures => "Lo que midió el sensor",
        Key::SwaySide => "de lado a lado",
        Key::SwayRound => "en todas direcciones",
        Key::SwayPath => "recorrido por segundo",
        Key::TouchDowns => "el pie tocó {n|una vez|# veces}",
        Key::SwayOwnOnly => {
            "Compárelo solo con lo suyo, con el teléfono en el mismo sitio. No dice lo probable que es una caída."
        }
        Key::NotMeasuredBecause => "No medido: {why}",
        Key::WhyNotSensor => "el sensor no dio nada",
        Key::WhyNotSlow => "el sensor es demasiado lento o dejó huecos",
        Key::WhyNotMoved => "el teléfono se movió o giró",
        Key::WhyNotShort => "el intento fue demasiado corto",
        Key::WhyNotQuiet => "el movimiento fue menor de lo que el sensor distingue",
        Key::WhyNotOdd => "los valores del sensor no tienen sentido",
        Key::StepOn => "¿Pasar {step}?",
        Key::StepBackTo => "¿Volver {step}?",
        Key::BeginAsBefore => "Empezar como antes",
        Key::StepTake => "Empezar con este paso",
        Key::StepAllowed => "Su clínica le deja decidir.",
        Key::StartCount => "Empezar la cuenta",
        Key::WhenReadyStart => "Nada empieza antes de que pulse.",
        Key::RestFor => "Descanso: {s} s. También puede seguir ya.",
        Key::LiftAtTone => "Levante el pie con el tono que sube",
        Key::TouchWhenDown => "Toque en cualquier sitio cuando baje el pie",
        Key::TouchTakesBack => "Apoyo al alcance. Un toque vuelve atrás.",
        Key::AnyTouchEnds => "Sujétese si lo necesita y toque: así termina el intento.",
        Key::TryOver => "Intento terminado",
        Key::LastTry => "Último intento: {s} s",
        Key::SecondsShort => "{s} s",
        Key::AtLeastSeconds => "{s} s, la meta",
        Key::SecondsOrMore => "{s} s o más",
        Key::BestToday => "El mejor",
        Key::MiddleToday => "Valor medio",
        Key::MiddleWeek => "Valor medio, últimos 7 días",
        Key::NoOwnYet => "aún no se sabe",
        Key::OneTryVaries => {
            "Un intento dice poco: los tiempos varían de un día a otro. El registro muestra hacia dónde van."
        }
        Key::OwnAndAim => "su valor medio esta semana: {own} s; meta {aim} s",
        Key::OnlyAim => "meta {aim} s",

        // patient: trouble
        Key::WhatIsWrong => "¿Qué va mal?",
        Key::NothingIsWrong => "No pasa nada, volver",
        Key::UrgentAnyway => "Si es urgente, no conteste aquí: llame al número de emergencias de su zona.",
        Key::DuringWhich => "¿Durante qué ejercicio?",
        Key::NotDuringOne => "No durante un ejercicio",
        Key::HeldBackTitle => "Lo que se detiene ahora",
        Key::HeldBackPlan => "Todos los ejercicios y avisos están parados.",
        Key::HeldBackBalance => "Todos los ejercicios de equilibrio están parados. Los demás siguen.",
        Key::HeldBackExercise => "Este ejercicio está parado. Los demás siguen.",
        Key::NotedForVisit => {
            "Queda anotado y su clínica lo verá en su próximo resumen. Un resumen no es un mensaje: nadie lo lee antes de la visita."
        }
        Key::NoDiagnosis => {
            "Este programa no diagnostica. Lo que le diga su clínica o el servicio de emergencias va primero."
        }
        Key::StopSitDown => "Pare y siéntese.",
        Key::StopNow => "Pare ahora.",
        Key::CallEmergency => "Llame ya al número de emergencias de su zona, o pida que llamen.",
        Key::NotAlone => "No se quede a solas y no conduzca.",
        Key::NerveToday => "Contacte hoy con su clínica o con un servicio de urgencias.",
        Key::NerveSudden => {
            "Si vino de golpe, aumenta o va con dificultad para hablar o ver: llame ya al número de emergencias de su zona."
        }
        Key::EmergencyToday => "Esto debe verse hoy en un servicio de urgencias, aunque no duela.",
        Key::CannotGetThere => "Si no puede llegar, llame al número de emergencias de su zona.",
        Key::StayDown => "Quédese en el suelo hasta sentirse firme. Levántese despacio, con una mano en el apoyo.",
        Key::FellBadly => {
            "Si se golpeó la cabeza, no puede ponerse de pie o puede haber algo roto: llame ya al número de emergencias de su zona."
        }
        Key::TellClinicFall => "Contacte con su clínica antes de volver a practicar el equilibrio, aunque no le duela nada.",
        Key::SitAndRest => "Siéntese y descanse hasta sentirse firme.",
        Key::StopThisOne => "Deje este ejercicio. Descanse en una postura cómoda.",
        Key::ContactClinic => "Contacte con su clínica antes de volver a hacerlo.",
        Key::SevereUrgent => {
            "Si es fuerte, no cede o va con debilidad o adormecimiento nuevos: número de emergencias de su zona o un servicio de urgencias."
        }

        // patient: card
        Key::NoPlanTitle => "Reciba su tarjeta del plan",
        Key::NoPlanWhat => "Se la da su clínica: un código en papel o en pantalla, un archivo o un texto.",
        Key::CardFile => "Foto o archivo de la tarjeta",
        Key::CardFileWhat => "Una foto nítida y recta de todo el código, o el archivo que le enviaron.",
        Key::CardText => "Texto de la tarjeta",
        Key::ReadTheCard => "Leer la tarjeta",
        Key::OnThisCard => "Lo que hay en esta tarjeta",
        Key::ClinicCode => "Huella: {code}",
        Key::NewClinic => {
            "Compárela con el papel o la pantalla de la clínica. Desde ahora solo esta clínica puede cambiar este plan."
        }
        Key::KnownClinic => "Ya conoce esta clínica por una tarjeta anterior.",
        Key::Replaces => "Sustituye la revisión {old} por la {new}. Lo que ha hecho hasta ahora se conserva.",
        Key::VisitOn => "Próxima visita: {date}",
        Key::ForComplaint => "Para: {name}",
        Key::FitYourDay => "Ajústelo a su día: {name}",
        Key::From => "Desde",
        Key::To => "Hasta",
        Key::TimeNumber => "Hora {n}",
        Key::TimesADay => "{n|una vez al día|# veces al día}",
        Key::TimesDiffer => "Elija una hora distinta para cada una.",
        Key::WhoPhotographs => "Quien fotografíe esta tarjeta puede usarla igual que usted: guárdela para sí.",
        Key::TakeThisPlan => "Aceptar este plan",
        Key::RemindersAhead => {
            "A estas horas se le recuerda con un aviso breve que no dice nada médico. Su sistema puede preguntar si lo permite."
        }
        Key::CameraOpen => "Escanear el código con la cámara",
        Key::CameraClose => "Cerrar la cámara",
        Key::CameraHow => "Tenga todo el código en la imagen, recto y cerca. Se lee solo.",
        Key::CameraSees => "Lo que ve la cámara",
        Key::CameraRefused => "No se pudo abrir ninguna cámara. Elija una foto del código o escriba su texto.",
        Key::CameraUnknown => "Aquí no hay cámara para escanear. Elija una foto del código o escriba su texto.",
        Key::SampleLook => "Echar un vistazo con un plan de muestra",
        Key::SampleWhat => "¿Aún sin tarjeta? Vea cómo es un plan y pruebe un ejercicio. No se guarda nada.",
        Key::SampleIs => "Plan de muestra: no se guarda nada.",
        Key::SampleLeave => "Salir",
        Key::SampleClinic => "Muestra, de nadie",
        Key::SampleBack => "parte alta de la espalda",
        Key::SampleAnkle => "el tobillo cede",
        Key::SampleMeeting => "aguantar sentado una reunión larga",
        Key::AnotherCard => "Otra tarjeta",
        Key::TakeNewCard => "Recibir una tarjeta nueva",

        // patient: plan
        Key::MyComplaints => "De qué se trata",
        Key::MyActivities => "Actividades que usted nombró",
        Key::Baselines => "Segundos sobre una pierna en la visita",
        Key::PainThen => "dolor {n} de 10",
        Key::OfTen => "{n} de 10",
        Key::Revision => "Revisión {n}.",

        // patient: record
        Key::DoneWhen => "Hecho, y a qué hora del día",
        Key::DonePlainly => "{k} de {n} hechos.",
        Key::ExtraPlainly => "{n|# sesión extra|# sesiones extra}.",
        Key::ClockBehind => {
            "Lo último registrado aquí es del {day}, pero según este dispositivo hoy es {today}. Revise la fecha del dispositivo; no se ha perdido nada."
        }
        Key::BalanceTitle => "Equilibrio",
        Key::PainTitle => "Dolor, de 0 a 10",
        Key::ActivitiesTitle => "Actividades, de 0 a 10",
        Key::NothingYet => "Aún no hay nada registrado. El primer ejercicio que haga aparecerá aquí.",

        // patient: visit
        Key::ForTheVisit => "Para la visita",
        Key::VisitWhat => {
            "Un archivo sellado que solo su clínica puede abrir. Usted elige qué periodo cubre y ve lo que contiene."
        }
        Key::HandedOver => "Lo que se entrega",
        Key::NotHandedOver => {
            "No se entrega: su nombre, la hora exacta de lo que hizo (solo en qué hora fue y cuánto después de un aviso), su lugar ni qué aparato usa."
        }
        Key::InDays => "{n|# día|# días}: del {from} al {until}, contados desde el inicio del plan",
        Key::InSlots => "{item}: cómo fue cada una de {n|# vez|# veces}, con los motivos de lo que se dejó",
        Key::InRuns => "{n|# ejecución|# ejecuciones}: cuánto de la dosis y la hora del día",
        Key::InTrials => "{n|# intento de equilibrio|# intentos de equilibrio} con sus segundos",
        Key::InPain => "{n|# valoración|# valoraciones} del dolor",
        Key::InSettled => "{n|# respuesta|# respuestas} sobre la mañana siguiente",
        Key::InRated => "{n|# valoración|# valoraciones} de sus actividades",
        Key::InAlarms => "Algo fue mal el {day}: {what}",
        Key::InDelays => "Por semana: cuánto después del aviso empezó",
        Key::InCorrections => "{n|Una anotación corregida|# anotaciones corregidas} por usted",
        Key::FramesShow => "Mostrarlo en códigos",
        Key::FramesTitle => "El resumen en un código",
        Key::FramesWhat => {
            "{n|La clínica fotografía este código.|La clínica fotografía cada código, en cualquier orden.} Suba el brillo de la pantalla."
        }
        Key::FrameOf => "Código {n} de {of}",
        Key::FrameNext => "Código siguiente",
        Key::FrameBefore => "Código anterior",
        Key::FramesTurn => "Pasar de uno a otro",
        Key::FramesStay => "Quedarse en este",
        Key::CorrectTitle => "Corregir algo",
        Key::CorrectWhat => {
            "Pulse lo que esté mal. Lo que dijo primero queda en el registro de este dispositivo. Su clínica ve lo que cuenta ahora y que se corrigió."
        }
        Key::CorrectNone => "{n|Del último día|De los últimos # días} no se puede corregir nada.",
        Key::CorrectOpen => "¿Se anotó algo por error?",
        Key::CorrectTakeOut => "Un error: quitarlo",
        Key::CorrectNotDone => "No lo hice",
        Key::CorrectChange => "Cambiarlo",
        Key::CorrectStands => "Volver a lo que dije primero",
        Key::CorrectAlarm => "Anotar que fue un error",
        Key::CorrectEarlier => "Ver días anteriores",
        Key::CorrectDays => "Guardar estos días",
        Key::CorrectAlarmNoted => "Anotado como aviso por error. Lo que detiene sigue detenido.",
        Key::CorrectedTo => "Ahora: {now}.",
        Key::CorrectedOut => "Quitado.",
        Key::CorrectedNotDone => "No se hizo.",
        Key::SaidPain => "Dolor, {of}: {score} de 10",
        Key::SaidPainAfter => "Dolor, {of}, después de {item}: {score} de 10",
        Key::SaidSettled => "{of}: calmado por la mañana",
        Key::SaidNotSettled => "{of}: no calmado por la mañana",
        Key::SaidRated => "{of}: {score} de 10",
        Key::SaidLeftOut => "{item}, {day}: no hecho, {reason}",
        Key::SaidExcused => "Libre del {from} al {until}: {why}",
        Key::SaidRun => "{item}: hecho {done} de {of}",
        Key::SaidTrouble => "Algo fue mal: {what}",
        Key::SaidTroubleDuring => "Algo fue mal durante {item}: {what}",
        Key::InTaken => "Qué día recibió una tarjeta y las horas que acordó",
        Key::NoteOptional => "Nota para la clínica (opcional)",
        Key::SaveSealed => "Guardar resumen sellado",
        Key::Sealed => "Guardado",
        Key::SealedWhat => "Lleve este archivo a la visita o envíelo a su clínica. Nadie más puede leerlo.",

        // patient: reminders
        Key::RemindersTitle => "Avisos",
        Key::RemindersWhat => {
            "Solo espera uno a la vez, y se va cuando pasa su hora. Si usted siguió el último, el siguiente no suena."
        }
        Key::QuietTitle => "Horarios sin avisos, cada día",
        Key::QuietWhat => "En ellos no llega ningún aviso. El que cae dentro llega al final, si entonces no es tarde.",
        Key::QuietSpan => "{from} a {to}",
        Key::QuietAdd => "Añadir un horario sin avisos",
        Key::QuietTakeOut => "Quitarlo",
        Key::QuietAdded => "Guardado: sin avisos de {span}.",
        Key::QuietTakenOut => "Quitado: {span}.",
        Key::QuietNone => "Ninguno por ahora.",
        Key::MeetingTitle => "En una reunión",
        Key::MeetingWhat => "Sin avisos hasta que acabe. Termina por sí sola.",
        Key::MeetingMinutes => "{n|# minuto|# minutos}",
        Key::MeetingHours => "{n|# hora|# horas}",
        Key::MeetingUntil => "En una reunión hasta las {time}.",
        Key::MeetingEnd => "Ya acabó",
        Key::SilentUntil => "Sin avisos hasta las {time}.",
        Key::SilentAlways => "Los horarios sin avisos llenan el día: no llega ninguno.",
        Key::NextReminder => "Próximo aviso: {day}, {time}.",
        Key::NoReminder => "Ningún aviso en las próximas dos semanas.",

        // patient: own data
        Key::MineTitle => "Lo que es suyo",
        Key::MineSave => "Guardarlo todo",
        Key::MineWhat => {
            "Sus planes y todo lo que registró, como texto y como tablas, en una carpeta propia. Quien tenga la carpeta puede leerla."
        }
        Key::MineSaved => "Guardado en {folder}.",
        Key::CalendarTitle => "Otro calendario",
        Key::CalendarSave => "Guardar las horas para un calendario",
        Key::CalendarWhat => {
            "Un archivo que el calendario de un teléfono puede abrir, para avisarle donde este programa no está. No dice nada de ejercicios, y nada vuelve de él. Pruebe antes un aviso; algunos calendarios los omiten."
        }
        Key::CalendarSaved => "Guardado como {file}.",
        Key::EraseTitle => "Borrarlo todo",
        Key::EraseWhat => {
            "Sus planes, todo lo que registró y sus ajustes desaparecen de este dispositivo para siempre. Los archivos que guardó se quedan, y también lo que su clínica ya tiene."
        }
        Key::EraseFirst => {
            "Si quiere conservarlo, guárdelo antes. Para empezar de nuevo necesita una tarjeta de su clínica."
        }
        Key::EraseAsk => "¿Borrarlo todo para siempre?",
        Key::EraseSure => "Sí, borrarlo todo",
        Key::EraseKeep => "No, conservarlo",
        Key::Erased => "Todo está borrado.",

        // patient: while the window is closed
        Key::StayTitle => "Con la ventana cerrada",
        Key::StayAtLogin => "Abrir al iniciar sesión en este ordenador",
        Key::StayAtLoginWhat => "Sin mostrar la ventana, para que lleguen los avisos.",
        Key::StayInTray => {
            "Mientras siga un plan, al cerrar la ventana Carryover sigue en la bandeja, para que lleguen los avisos. Para terminarlo, elija allí Salir."
        }
        Key::StayEnds => {
            "Este escritorio no tiene bandeja. Al cerrar la ventana, Carryover pregunta si sigue en segundo plano, para que lleguen los avisos."
        }
        Key::ClosingTitle => "¿Cerrar y dejar de recibir avisos?",
        Key::ClosingWhat => {
            "Este escritorio no tiene bandeja donde Carryover pueda seguir. En segundo plano, con la ventana minimizada, le sigue avisando. Cerrado, no le avisa hasta que lo abra de nuevo."
        }
        Key::ClosingKeep => "Dejarlo en segundo plano",
        Key::ClosingEnd => "Cerrar sin más avisos",
        Key::TrayMeeting => "En una reunión durante {n|# hora|# horas}",
        Key::TrayDue => "Toca ahora, hasta las {time}.",
        Key::TrayNext => "Lo siguiente, a las {time}.",
        // patient ends
    }
}
