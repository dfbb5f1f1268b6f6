// Bandwright. SPDX-License-Identifier: Apache-2.0
// Asks the validator of the format's makers about a GLB file; prints what it complains of, hints left out.
const fs = require('fs');
const validator = require(`${process.argv[2]}/node_modules/gltf-validator`);

validator.validateBytes(new Uint8Array(fs.readFileSync(process.argv[3]))).then((report) => {
    report.issues.messages.filter((issue) => issue.severity < 2).forEach((issue) => console.log(`${issue.code} ${issue.pointer} ${issue.message}`));
    console.log(`${report.issues.numErrors} errors, ${report.issues.numWarnings} warnings`);
});
