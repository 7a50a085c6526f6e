"""Checks FHIR files with the models of fhir.resources, with the lists of codes in them, and with rules that no validator has.

    python3 validate.py FILE...

Prints a line for each fault: validator, file and what is wrong, with tabs between. Ends with 0 even then.
"""

import json
import sys
from urllib.parse import parse_qs

from fhir.resources.R4B import get_fhir_model_class
from pydantic import BaseModel, ValidationError

SNOMED = "http://snomed.info/sct"
LOINC = "http://loinc.org"
UCUM = "http://unitsofmeasure.org"
HL7 = "http://terminology.hl7.org/CodeSystem/"
OWN = "urn:uuid:0c7df4a2-53f1-4b06-9d0e-7a6c1f2f8b61"
EXERCISES = "urn:uuid:4ba8fd3e-4d3a-4a57-8d53-16c3a2b1c0f4"

# Every code of others that may be written, as it was read in a release or an implementation guide.
ALLOWED = {
    SNOMED: {
        "229065009", "386293009", "229070002", "266741004", "229072005",
        "7771000", "24028007", "51440002", "32153003", "62175007",
    },
    LOINC: {"72514-3"},
    UCUM: {"1", "%", "d", "s", "min", "/min", "kg", "deg", "{score}"},
    HL7 + "observation-category": {"activity", "survey", "exam"},
    HL7 + "provenance-participant-type": {"author", "assembler"},
    HL7 + "data-absent-reason": {"not-applicable"},
    HL7 + "goal-achievement": {"improving", "worsening", "no-change"},
}


def walk(value, path=""):
    """All objects within a JSON value, with their paths."""
    if isinstance(value, dict):
        yield path, value
        for key, inner in value.items():
            yield from walk(inner, f"{path}.{key}")
    elif isinstance(value, list):
        for place, inner in enumerate(value):
            yield from walk(inner, f"{path}[{place}]")


def models(resource):
    """What fhir.resources says, with the codes that a field lists, which the model itself does not check."""
    try:
        model = get_fhir_model_class(resource["resourceType"]).model_validate(resource)
    except ValidationError as fault:
        for error in fault.errors():
            place = ".".join(str(part) for part in error["loc"])
            yield f"{resource['resourceType']}.{place}: {error['msg']}"
        return
    yield from codes(model, resource["resourceType"])


def codes(model, path):
    for name, field in type(model).model_fields.items():
        extra = field.json_schema_extra if isinstance(field.json_schema_extra, dict) else {}
        known = extra.get("enum_values")
        values = getattr(model, name, None)
        for value in values if isinstance(values, list) else [values]:
            if isinstance(value, BaseModel):
                yield from codes(value, f"{path}.{name}")
            elif value is not None and known and not any("+" in one for one in known) and value not in known:
                yield f"{path}.{name}: {value} is none of {known}"


def references(bundle):
    urls = [entry.get("fullUrl") for entry in bundle["entry"]]
    for path, value in walk(bundle):
        target = value.get("reference")
        if isinstance(target, str) and target not in urls:
            yield f"{path}: nothing is at {target}"


def known_codes(bundle):
    """Every coding is in the list, and every code of our own is in the code system where the file has it."""
    systems = [e["resource"] for e in bundle["entry"] if e["resource"]["resourceType"] == "CodeSystem"]
    own = {concept["code"] for system in systems for concept in system["concept"]}
    for path, value in walk(bundle):
        system, code = value.get("system"), value.get("code")
        if code is None or isinstance(code, dict) or "concept" in path.rsplit(".", 1)[-1]:
            continue
        if system == EXERCISES or (system == OWN and (code in own or not systems)):
            continue
        if code not in ALLOWED.get(system, ()):
            yield f"{path}: {code} of {system} is not in the list"


def absent(bundle):
    """obs-6: why there is no value is said only if there is none. And something is said."""
    for path, value in walk(bundle):
        if value.get("resourceType") != "Observation":
            continue
        valued = any(key.startswith("value") for key in value)
        if valued and "dataAbsentReason" in value:
            yield f"{path}: a value, and why there is none"
        if not valued and "dataAbsentReason" not in value and "component" not in value:
            yield f"{path}: nothing is said"


def homes_and_visits(bundle):
    """What was found at a visit has no code of what was recorded at home, is of no plan and of no device, and a mistake says nothing more."""
    for path, value in walk(bundle):
        if value.get("resourceType") != "Observation":
            continue
        named = [one["value"].startswith("visit/") for one in value.get("identifier", [])]
        coded = [one["code"].startswith("visit-") for one in value.get("code", {}).get("coding", [])]
        if len(set(named + coded)) > 1:
            yield f"{path}: of a visit and of home at once"
        if all(named) and "device" in value:
            yield f"{path}: measured by the program"
        said = {key for key in value if key.startswith("value") or key in ("component", "bodySite", "method")}
        if value.get("status") == "entered-in-error" and said:
            yield f"{path}: a mistake is told again in {sorted(said)}"


def timings(bundle):
    """In R4, times of day and days of the week stand beside no frequency."""
    for path, value in walk(bundle):
        repeat = value.get("repeat")
        if not isinstance(repeat, dict):
            continue
        fixed = {"timeOfDay", "dayOfWeek", "when"} & repeat.keys()
        if fixed and {"frequency", "period"} & repeat.keys():
            yield f"{path}: {sorted(fixed)} beside a frequency"
        if not fixed and not {"frequency", "period"} <= repeat.keys():
            yield f"{path}: it does not say when"
        ends = repeat.get("boundsPeriod", {})
        if ends.get("start", "") > ends.get("end", "9999"):
            yield f"{path}: it ends before it begins"


def no_single_sessions(bundle):
    """A stance time that reached its cap says so, and nothing finer than a day is written but when the file was made."""
    for path, value in walk(bundle):
        for key in ("effectiveDateTime", "start", "end"):
            if len(value.get(key, "")) > 10:
                yield f"{path}.{key}: a time of day"


def requests(bundle):
    """What is imported twice must not be there twice: a server looks for the name that the resource has, or for its id."""
    urls = set()
    for place, entry in enumerate(bundle["entry"]):
        request = entry.get("request")
        if bundle["type"] != "transaction" or request is None:
            continue
        resource = entry["resource"]
        by_id = f"{resource['resourceType']}/{resource.get('id')}"
        query = request.get("ifNoneExist", "") if request["method"] == "POST" else request["url"].partition("?")[2]
        names = [f"{one['system']}|{one['value']}" for one in resource.get("identifier", [])]
        if parse_qs(query).get("identifier") != names and request["url"] != by_id:
            yield f".entry[{place}]: nothing tells whether it is there already"
        if (query, request["url"]) in urls:
            yield f".entry[{place}]: it is asked for twice"
        urls.add((query, request["url"]))


OURS = (references, known_codes, absent, homes_and_visits, timings, no_single_sessions, requests)

for file in sys.argv[1:]:
    with open(file, encoding="utf-8") as opened:
        read = json.load(opened)
    resources = [entry["resource"] for entry in read["entry"]]
    faults = [("fhir.resources", fault) for resource in [read, *resources] for fault in models(resource)]
    faults += [("rules", f"{rule.__name__}{fault}") for rule in OURS for fault in rule(read)]
    for validator, fault in faults:
        print(validator, file, " ".join(fault.split()), sep="\t")
