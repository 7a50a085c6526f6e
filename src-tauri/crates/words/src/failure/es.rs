//! Refusals in Spanish.

use super::{joined, numbers};
use exercises::plan::Risk;
use exercises::plan::check::{Problem, TextPlace};
use wire::Failure;

/// Fault and advice.
pub fn failure(failure: &Failure) -> (String, String) {
    let (fault, advice): (String, &str) = match failure {
        Failure::CardForeign => {
            ("Esto no es una tarjeta de plan de Carryover.".into(), "Use el código, texto o archivo que le dio su clínica.")
        }
        Failure::CardDamaged => (
            "La tarjeta está dañada: una parte fue cambiada.".into(),
            "Escanéela o cópiela de nuevo; si falla, pida otra a la clínica.",
        ),
        Failure::CardCut => {
            ("La tarjeta está cortada: le falta una parte.".into(), "Escanee o copie de nuevo la tarjeta entera.")
        }
        Failure::CardNewer { found, known } => (
            format!("La tarjeta es de la versión {found}; este programa lee hasta la {known}."),
            "Actualice el programa y reciba la tarjeta de nuevo.",
        ),
        Failure::CardTooBig => (
            "Es demasiado grande para ser una tarjeta de plan.".into(),
            "Use el código, texto o archivo que le dio su clínica.",
        ),
        Failure::CardOtherClinic => (
            "La tarjeta habla de un plan que usted tiene de otra clínica, pero no lleva la firma de aquella.".into(),
            "No la reciba; pida una tarjeta nueva a su clínica.",
        ),
        Failure::CardOld { revision, have } => (
            format!("La tarjeta es la revisión {revision}; usted ya sigue la revisión {have}."),
            "No hay que hacer nada; pregunte a la clínica si esperaba una más nueva.",
        ),
        Failure::CardRefused(problems) => (
            format!("El plan de la tarjeta no se puede seguir aquí. {}", joined(problems, problem)),
            "Actualice el programa, o pida otra tarjeta a la clínica.",
        ),
        Failure::NoCode => (
            "No hay ningún código legible en esta imagen.".into(),
            "Tome una foto nítida y recta de todo el código, o use el texto de la tarjeta.",
        ),
        Failure::NotAPicture => (
            "Este archivo no es ni una imagen (PNG, JPEG) ni un archivo de tarjeta.".into(),
            "Elija la imagen, el texto o el archivo de la tarjeta.",
        ),
        Failure::FileTooBig { file, most } => {
            (format!("{file} pasa de {most} bytes, lo más que se lee."), "Elija el archivo correcto.")
        }
        Failure::SummaryForeign => {
            ("Esto no es un resumen sellado.".into(), "Pida al paciente el archivo que guardó Carryover.")
        }
        Failure::SummaryDamaged => ("El resumen está dañado o cortado.".into(), "Pida al paciente que lo guarde otra vez."),
        Failure::SummaryOtherClinic => {
            ("El resumen está sellado para otra clínica.".into(), "Pida al paciente el que corresponde a su plan.")
        }
        Failure::SummaryUnknownPlan => (
            "El resumen es de un plan que esta clínica no tiene.".into(),
            "Compruebe que es la carpeta de datos desde la que se emitió la tarjeta.",
        ),
        Failure::SummaryNotFromCard => (
            "El resumen no lo hizo quien tiene la tarjeta del plan.".into(),
            "No lo use; pida al paciente que guarde uno nuevo.",
        ),
        Failure::SummaryNumberTaken => (
            "Ya llegó de ese dispositivo otro resumen con el mismo número, como ocurre cuando sus datos se recuperan de una copia."
                .into(),
            "Pida al paciente que guarde uno nuevo y reciba ese.",
        ),
        Failure::SummaryNewer { found, known } => (
            format!("El resumen es de la versión {found}; este programa lee hasta la {known}."),
            "Actualice el programa y recíbalo de nuevo.",
        ),
        Failure::FramesTooMany { most } => (
            format!("El resumen es demasiado largo para mostrarlo en códigos, que llevan {most} bytes sellados."),
            "Elija menos días o guárdelo como archivo.",
        ),
        Failure::FramesMissing { have, of, missing } => (
            format!("De los {of} códigos de este resumen han llegado {have}; faltan: {}.", numbers(missing)),
            "Haga una foto de cada código que falta y reciba todas juntas.",
        ),
        Failure::FrameDamaged => (
            "Un código de este resumen está dañado o no concuerda con los demás.".into(),
            "Haga fotos nuevas y nítidas de cada código y reciba todas juntas.",
        ),
        Failure::NoSummaryCode => (
            "En esta imagen no hay ningún código legible de un resumen.".into(),
            "Haga una foto nítida y recta del código entero, o pida el archivo sellado.",
        ),
        Failure::NoSuchEntry { entry } => (
            format!("No hay ninguna anotación {entry} que se pueda corregir."),
            "Mire la lista de lo que se puede corregir y tome un número de ella.",
        ),
        Failure::CorrectionUnfit => (
            "Esta anotación no se puede corregir así.".into(),
            "Quítela, o dé lo que le corresponde: un valor, una respuesta, un motivo o unos días.",
        ),
        Failure::FileMissing { file } => (format!("No existe el archivo {file}."), "Compruebe la ruta."),
        Failure::FileUnreadable { file } => (
            format!("No se puede leer {file}."),
            "Compruebe que es lo que se pide, un archivo o una carpeta, y que puede leerlo.",
        ),
        Failure::FileUnwritable { file } => {
            (format!("No se puede escribir {file}."), "Elija una carpeta con permiso de escritura y espacio libre.")
        }
        Failure::HomeMissing { home } => {
            (format!("No hay carpeta de datos en {home}."), "Compruebe la ruta, o inicie el programa una vez para crearla.")
        }
        Failure::HomeReadOnly { home } => (
            format!("No se puede escribir en la carpeta de datos {home}."),
            "Dese permiso para escribir allí, o elija otra carpeta.",
        ),
        Failure::HomeFull { home } => (
            format!("No queda espacio para la carpeta de datos {home}."),
            "Libere espacio e inténtelo de nuevo; lo guardado antes está a salvo.",
        ),
        Failure::HomeDisk { home } => (
            format!("El disco no aceptó o no entregó lo que es de la carpeta de datos {home}."),
            "Revise el disco y su límite de uso e inténtelo de nuevo; lo guardado antes está a salvo.",
        ),
        Failure::HomeIsFile { home } => {
            (format!("{home} es un archivo, no una carpeta."), "Elija una carpeta para los datos.")
        }
        Failure::HomeNewer { home } => (
            format!("La carpeta de datos {home} es de una versión más nueva de este programa."),
            "Actualice el programa; no se cambió nada.",
        ),
        Failure::HomeInUse { home } => {
            (format!("Otra copia del programa tiene abierta {home}."), "Cierre antes la otra copia.")
        }
        Failure::HomeDamaged { home } => {
            (format!("La base de datos de {home} está dañada."), "Deje la carpeta como está y recupere su última copia.")
        }
        Failure::HomeForeign { home } => (format!("La base de datos de {home} es de otro programa."), "Elija otra carpeta."),
        Failure::OtherRole => {
            ("Esta carpeta de datos es del otro lado.".into(), "Use con --home la carpeta del lado correcto.")
        }
        Failure::OnlySample => {
            ("Esto es solo una muestra y no se guarda nada.".into(), "Salga antes de la muestra; luego reciba su tarjeta.")
        }
        Failure::NoRole => (
            "Esta carpeta de datos aún no tiene lado.".into(),
            "Elija en el primer inicio si hace ejercicios o los prescribe.",
        ),
        Failure::WrongPassphrase => {
            ("La frase de paso no es correcta.".into(), "Inténtelo de nuevo; no se puede recuperar.")
        }
        Failure::PassphraseMissing => (
            "No se dio la frase de paso, y no hay terminal donde pedirla.".into(),
            "Escríbala en la primera línea de un archivo y nómbrelo con --passphrase-file.",
        ),
        Failure::WeakPassphrase { least } => (
            format!("La frase de paso tiene menos de {least} caracteres."),
            "Elija una más larga, por ejemplo varias palabras.",
        ),
        Failure::KeysDamaged => {
            ("Las claves de la clínica están dañadas.".into(), "Recupere la carpeta de datos de su última copia.")
        }
        Failure::ClinicNotStarted => ("Esta clínica aún no tiene claves.".into(), "Inicie antes la clínica."),
        Failure::ClinicStarted => ("Esta clínica ya tiene sus claves.".into(), "Ábrala con su frase de paso."),
        Failure::ClinicLocked => ("El archivo de la clínica está cerrado.".into(), "Escriba la frase de paso."),
        Failure::NoSuchPatient { code } => {
            (format!("No hay ningún paciente con el código {code}."), "Compruebe el código, o añada al paciente.")
        }
        Failure::CodeTaken { code } => (format!("El código {code} ya está en uso."), "Elija otro código."),
        Failure::CodeBad => ("Un código tiene de 1 a 12 letras, cifras y guiones.".into(), "Elija un código así."),
        Failure::PlanRefused(problems) => (joined(problems, problem), "Cambie el plan y emítalo."),
        Failure::NoPlan => ("Aún no hay ningún plan.".into(), "Reciba la tarjeta que le dio su clínica."),
        Failure::WhichPlan => ("Usted sigue varios planes.".into(), "Nombre el plan con --plan."),
        Failure::NoSuchItem => ("El plan no tiene ese ejercicio.".into(), "Mire de nuevo el plan; puede haber cambiado."),
        Failure::NoSuchSlot => ("El plan no tiene esa hora.".into(), "Mire de nuevo el día; el plan puede haber cambiado."),
        Failure::Paused(_) => (
            "Este ejercicio está retenido desde que usted dijo que algo iba mal.".into(),
            "Contacte con su clínica; solo una tarjeta nueva suya le permite seguir con ello.",
        ),
        Failure::EmptyPeriod => {
            ("El periodo no contiene ningún día del plan.".into(), "Elija un periodo entre el inicio del plan y hoy.")
        }
        Failure::OutOfRange { least, most } => {
            (format!("El número debe estar entre {least} y {most}."), "Elija un número de ese intervalo.")
        }
        Failure::FolderOccupied { folder } => {
            (format!("La carpeta {folder} ya contiene algo."), "Indique una carpeta que aún no exista, o una vacía.")
        }
        Failure::QuietUnfit { most } => (
            format!("Un horario sin avisos necesita un comienzo y otro final, como 12:00-13:00, y hay {most} como mucho."),
            "Corrija los horarios; los anteriores siguen en vigor.",
        ),
        Failure::NothingAhead => (
            "Desde ahora hasta la fecha de revisión no toca nada.".into(),
            "Reciba antes una tarjeta nueva, o vea en la página Plan qué está en espera.",
        ),
        Failure::NotConfirmed { home } => (
            format!(
                "Esto borraría para siempre lo que hay en {home}: los planes, todo lo registrado, los ajustes y el vínculo con su clínica; los archivos que usted guardó se quedan."
            ),
            "Exporte lo que quiera conservar y luego añada --yes.",
        ),
        Failure::AtLoginRefused { detail } => (
            format!("El sistema no ha dejado cambiarlo: {detail}"),
            "Mire en los ajustes del propio sistema qué se abre al iniciar sesión.",
        ),
        Failure::TextUnfit { most } => (
            format!("El texto pasa de {most} caracteres, o tiene uno que no se puede mostrar."),
            "Escríbalo más corto, en una línea.",
        ),
        Failure::NotUnderstood { file, line: 0, expected } => {
            (format!("No se entiende {file}: {expected}."), "Corríjalo e inténtelo de nuevo.")
        }
        Failure::NotUnderstood { file, line, expected } => {
            (format!("{file}, línea {line}: {expected}."), "Corrija el archivo.")
        }
        Failure::Internal { detail } => (
            format!("El programa tiene un fallo: {detail}."),
            "Inícielo de nuevo; lo guardado está a salvo. Si se repite, comuníquelo.",
        ),
    };
    (fault, advice.to_owned())
}

/// One sentence.
pub fn problem(problem: &Problem) -> String {
    match problem {
        Problem::NoItem => "El plan no tiene ejercicios.".into(),
        Problem::TooMany => "El plan tiene más entradas de las que caben.".into(),
        Problem::Text { what, most } => {
            let what = match what {
                TextPlace::Clinic => "El nombre de la clínica",
                TextPlace::Complaint => "El nombre de una molestia",
                TextPlace::Activity => "El nombre de una actividad",
                TextPlace::Note => "La nota de un ejercicio",
                TextPlace::Aftercare => "Una línea de cuidados",
            };
            format!("{what} falta o pasa de {most} caracteres.")
        }
        Problem::SameNumber => "Dos entradas del plan llevan el mismo número.".into(),
        Problem::ReviewDate => "La fecha de revisión debe ser posterior a hoy, dentro de un año.".into(),
        Problem::Score => "Una puntuación pasa de 10.".into(),
        Problem::UnknownExercise(_, id) => format!("El ejercicio «{id}» no está en el catálogo de este programa."),
        Problem::OtherContent(_, id) => format!("El ejercicio «{id}» está aquí en otra edición."),
        Problem::UnknownRung(item, rung) if rung.is_empty() => format!("El ejercicio {item} necesita un peldaño."),
        Problem::UnknownRung(_, rung) => format!("El peldaño «{rung}» no está en el catálogo de este programa."),
        Problem::Dose(item) => format!("La dosis del ejercicio {item} está fuera de los límites."),
        Problem::Side(item) => format!("El lado del ejercicio {item} no le corresponde."),
        Problem::Schedule(item) => format!("Las horas del ejercicio {item} faltan o están fuera de los límites."),
        Problem::Serves(item) => format!("El ejercicio {item} sirve a una molestia que el plan no tiene."),
        Problem::AgeMissing => "El equilibrio en casa necesita el grupo de edad.".into(),
        Problem::NotTicked(risks) => {
            let risks: Vec<&str> = risks.iter().map(|risk| self::risk(*risk)).collect();
            format!("El equilibrio en casa necesita marcar como ausentes: {}.", risks.join("; "))
        }
        Problem::NoStanceBaseline(item) => {
            format!(
                "El ejercicio {item} necesita el tiempo de hoy sobre una pierna, ojos abiertos y suelo firme, de cada lado prescrito."
            )
        }
        Problem::StanceTooShort(item) => {
            format!("Ejercicio {item}: con menos de cinco segundos con ojos abiertos, el equilibrio no se practica a solas.")
        }
        Problem::GateClosed(item) => {
            format!("Ejercicio {item}: una base más blanda o los ojos cerrados esperan a treinta segundos en dos días.")
        }
        Problem::SoftAndClosed(item) => {
            format!("Ejercicio {item}: desde los 65 años, nada de base blanda con ojos cerrados.")
        }
    }
}

/// One line of the ticked list.
pub fn risk(risk: Risk) -> &'static str {
    match risk {
        Risk::HighFallRisk => {
            "una caída con lesión, dos o más caídas en un año, fragilidad, una hora en el suelo, pérdida de conciencia"
        }
        Risk::VertigoOrFainting => "vértigo, crisis vestibular o desmayos en estudio",
        Risk::NumbFeet => "neuropatía o pies dormidos",
        Risk::NeurologicalUnsteadiness => "enfermedad de Parkinson o ictus con inestabilidad",
        Risk::PartialWeightBearing => "una ortesis o carga parcial",
        Risk::FreshInjury => "una fractura, operación o rotura de ligamento reciente",
        Risk::SevereOsteoporosis => "osteoporosis grave",
        Risk::SedativesOrAlcohol => "sedantes o alcohol",
        Risk::SevereVisualLoss => "pérdida grave de visión (ojos cerrados)",
        Risk::CognitiveImpairment => "deterioro cognitivo",
        Risk::LatePregnancy => "embarazo avanzado",
    }
}
