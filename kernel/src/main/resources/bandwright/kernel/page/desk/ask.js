// Bandwright. SPDX-License-Identifier: Apache-2.0
// Asks the desk. A question in vain is an error whose message is a sentence for people.

const key = document.querySelector('meta[name="bandwright-key"]').content;

/** Tells this page's own changes from those of others. */
const page = Math.random().toString(36).slice(2);

async function ask(what, asked) {
    let answer;
    try {
        answer = await fetch('/desk/' + what, {
            method: 'POST',
            headers: { 'Content-Type': 'application/json', 'X-Bandwright-Key': key },
            body: JSON.stringify({ ...asked, page }),
        });
    } catch (fault) {
        const gone = new Error('The program does not answer. Keep this page open: it goes on trying, and what you typed stays here.');
        gone.lost = true;
        throw gone;
    }
    if (answer.ok) {
        return answer.json();
    }
    const told = answer.status === 409 ? (await answer.json()).fault : await answer.text();
    const fault = new Error(told);
    // Refused or failed, not answered: what was typed has not arrived, and must not be thought so.
    fault.lost = answer.status !== 409;
    throw fault;
}

export { ask, page };
