//! Data types and resources of FHIR R4 (4.0.1), as far as they are written here.
//!
//! An element that is not there is left out: in FHIR nothing is null, and no list is empty.

use serde::Serialize;
use serde_json::Number;

/// Whether an element is not there.
trait Absent {
    fn absent(&self) -> bool;
}

impl<T> Absent for Option<T> {
    fn absent(&self) -> bool {
        self.is_none()
    }
}

impl<T> Absent for Vec<T> {
    fn absent(&self) -> bool {
        self.is_empty()
    }
}

impl Absent for String {
    fn absent(&self) -> bool {
        self.is_empty()
    }
}

impl Absent for &str {
    fn absent(&self) -> bool {
        self.is_empty()
    }
}

impl Absent for Reference {
    fn absent(&self) -> bool {
        *self == Reference::default()
    }
}

impl Absent for CodeableConcept {
    fn absent(&self) -> bool {
        *self == CodeableConcept::default()
    }
}

macro_rules! elements {
    ($($(#[doc = $doc:literal])+ $name:ident { $($field:ident: $kind:ty,)+ })+) => {
        $($(#[doc = $doc])+
        #[derive(Debug, Clone, PartialEq, Default, Serialize)]
        #[serde(rename_all = "camelCase")]
        pub(super) struct $name {
            $(#[serde(skip_serializing_if = "Absent::absent")]
            pub $field: $kind,)+
        })+
    };
}

elements! {
    /// A code of a system.
    Coding { system: &'static str, code: String, display: String, }
    /// What is meant, by codes and in words.
    CodeableConcept { coding: Vec<Coding>, text: String, }
    /// An amount in a unit of UCUM.
    Quantity {
        value: Option<Number>,
        comparator: Option<&'static str>,
        unit: String,
        system: &'static str,
        code: &'static str,
    }
    /// From a day to another, both included.
    Period { start: Option<String>, end: Option<String>, }
    /// A name that does not change.
    Identifier { system: String, value: String, assigner: Option<Reference>, }
    /// Another resource of the same bundle, or something outside by its identifier or in words.
    Reference { reference: String, identifier: Option<Box<Identifier>>, display: String, }
    /// What FHIR has no element for.
    Extension {
        url: &'static str,
        extension: Vec<Extension>,
        value_quantity: Option<Quantity>,
        value_code: String,
        value_string: String,
    }
    /// When something is to be done.
    Timing { repeat: Option<Repeat>, code: Option<CodeableConcept>, }
    /// How it repeats.
    Repeat {
        bounds_period: Option<Period>,
        duration: Option<u32>,
        duration_unit: &'static str,
        frequency: Option<u32>,
        period: Option<u32>,
        period_unit: &'static str,
        day_of_week: Vec<&'static str>,
        time_of_day: Vec<String>,
    }
    /// A name in words.
    HumanName { text: String, }
    /// The patient, known by the clinic's code.
    Patient { identifier: Vec<Identifier>, name: Vec<HumanName>, }
    /// The whole plan.
    CarePlan {
        identifier: Vec<Identifier>,
        status: &'static str,
        intent: &'static str,
        category: Vec<CodeableConcept>,
        title: String,
        subject: Reference,
        period: Option<Period>,
        created: String,
        goal: Vec<Reference>,
        activity: Vec<Activity>,
    }
    /// One item of it.
    Activity { reference: Reference, }
    /// One exercise that is ordered.
    ServiceRequest {
        extension: Vec<Extension>,
        identifier: Vec<Identifier>,
        status: &'static str,
        intent: &'static str,
        category: Vec<CodeableConcept>,
        code: CodeableConcept,
        order_detail: Vec<CodeableConcept>,
        subject: Reference,
        occurrence_period: Option<Period>,
        occurrence_timing: Option<Timing>,
        as_needed_boolean: Option<bool>,
        authored_on: String,
        performer: Vec<Reference>,
        body_site: Vec<CodeableConcept>,
        patient_instruction: String,
    }
    /// What is to be reached.
    Goal {
        identifier: Vec<Identifier>,
        lifecycle_status: &'static str,
        achievement_status: Option<CodeableConcept>,
        description: CodeableConcept,
        subject: Reference,
        start_date: String,
        target: Vec<GoalTarget>,
        outcome_reference: Vec<Reference>,
    }
    /// By what it is measured.
    GoalTarget { measure: CodeableConcept, }
    /// Something that was measured.
    Observation {
        identifier: Vec<Identifier>,
        based_on: Vec<Reference>,
        status: &'static str,
        category: Vec<CodeableConcept>,
        code: CodeableConcept,
        subject: Reference,
        effective_date_time: String,
        effective_period: Option<Period>,
        performer: Vec<Reference>,
        value_quantity: Option<Quantity>,
        value_codeable_concept: Option<CodeableConcept>,
        value_boolean: Option<bool>,
        value_string: String,
        data_absent_reason: Option<CodeableConcept>,
        body_site: Option<CodeableConcept>,
        method: Option<CodeableConcept>,
        device: Option<Reference>,
        component: Vec<Component>,
    }
    /// A part of it.
    Component {
        code: CodeableConcept,
        value_quantity: Option<Quantity>,
        value_codeable_concept: Option<CodeableConcept>,
        value_boolean: Option<bool>,
        value_string: String,
    }
    /// The program: its name and version, and nothing of the computer that it runs on.
    Device {
        identifier: Vec<Identifier>,
        status: &'static str,
        device_name: Vec<DeviceName>,
        version: Vec<DeviceVersion>,
    }
    /// What a device is called.
    DeviceName { name: &'static str, r#type: &'static str, }
    /// The version of a device.
    DeviceVersion { value: String, }
    /// From whom and from what the other resources come.
    Provenance {
        id: String,
        target: Vec<Reference>,
        recorded: String,
        agent: Vec<Agent>,
        entity: Vec<Entity>,
    }
    /// Who took part.
    Agent { r#type: CodeableConcept, who: Reference, }
    /// What was used.
    Entity { role: &'static str, what: Reference, }
    /// The codes of our own.
    CodeSystem {
        url: &'static str,
        version: &'static str,
        name: &'static str,
        title: &'static str,
        status: &'static str,
        case_sensitive: Option<bool>,
        content: &'static str,
        copyright: String,
        concept: Vec<Concept>,
    }
    /// One of them.
    Concept { code: String, display: String, }
    /// The file.
    Bundle {
        resource_type: &'static str,
        language: String,
        r#type: &'static str,
        timestamp: String,
        entry: Vec<Entry>,
    }
    /// One resource in it.
    Entry { full_url: String, resource: Option<Resource>, request: Option<Request>, }
    /// What a server is asked to do with it.
    Request { method: &'static str, url: String, if_none_exist: String, }
}

/// A resource, with its type.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "resourceType")]
pub(super) enum Resource {
    Patient(Patient),
    CarePlan(CarePlan),
    ServiceRequest(ServiceRequest),
    Goal(Goal),
    Observation(Observation),
    Device(Device),
    Provenance(Provenance),
    CodeSystem(CodeSystem),
}

impl Resource {
    /// The name of its type.
    pub fn kind(&self) -> &'static str {
        match self {
            Resource::Patient(_) => "Patient",
            Resource::CarePlan(_) => "CarePlan",
            Resource::ServiceRequest(_) => "ServiceRequest",
            Resource::Goal(_) => "Goal",
            Resource::Observation(_) => "Observation",
            Resource::Device(_) => "Device",
            Resource::Provenance(_) => "Provenance",
            Resource::CodeSystem(_) => "CodeSystem",
        }
    }
}

impl CodeableConcept {
    /// A code, and what is meant in words.
    pub fn new(coding: Coding, text: impl Into<String>) -> CodeableConcept {
        CodeableConcept { coding: vec![coding], text: text.into() }
    }

    /// In words alone.
    pub fn said(text: impl Into<String>) -> CodeableConcept {
        CodeableConcept { coding: Vec::new(), text: text.into() }
    }
}

impl From<Coding> for CodeableConcept {
    fn from(coding: Coding) -> CodeableConcept {
        CodeableConcept::new(coding, "")
    }
}
