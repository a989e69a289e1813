import type { FilePhrases, JsonPhrases, ProjectPhrases } from '../../../core/project/index.ts';
import type { Entries } from '../../catalogue.ts';

const json: Entries<JsonPhrases> = {
  'json.nothing-more': 'rien de plus n’était attendu ici',
  'json.ends-early': 'le texte finit trop tôt',
  'json.value-expected': 'une valeur était attendue ici',
  'json.colon-expected': 'un deux-points était attendu ici',
  'json.comma-or-brace-expected': 'une virgule ou une accolade fermante } était attendue ici',
  'json.comma-or-bracket-expected': 'une virgule ou un crochet fermant ] était attendu ici',
  'json.name-expected': 'un nom entre guillemets droits était attendu ici',
  'json.text-not-closed': 'ce texte entre guillemets n’est pas fermé',
  'json.escape-unknown': 'ce signe après la barre oblique inverse n’est pas connu',
  'json.too-deep': ({ most }) => `plus de ${most} crochets ou accolades emboîtés`,
  'json.key-twice': ({ key }) => `la clé « ${key} » est donnée deux fois`,
};

const WANTED = {
  number: 'un nombre',
  int: 'un nombre entier',
  string: 'un texte',
  boolean: 'true ou false',
  object: 'un objet entre accolades { }',
  array: 'une liste entre crochets [ ]',
};

const BOUNDS = { least: 'au moins', most: 'au plus' };
const COUNTED = { characters: ' caractères', entries: ' entrées' };

const nameField = (field: string) => (field === '' ? 'Le projet' : field);
const listChoices = (choices: readonly string[]) => choices.map((choice) => `« ${choice} »`).join(' ou ');

const files: Entries<FilePhrases> = {
  'file.not-json': ({ line, column, fault }, { say }) =>
    `Le fichier n’est pas du JSON lisible : ligne ${line}, colonne ${column} : ${say(fault)}.`,
  'file.no-project': 'Le fichier ne contient pas de projet : il faut un objet entre accolades { }.',
  'file.wrong-format': ({ found, format }) =>
    `format ${found === undefined ? 'manque' : `vaut ${found}`} ; dans un fichier de projet, il y a "${format}".`,
  'file.unknown-version': ({ found, oldest, newest }) =>
    `version ${found === undefined ? 'manque' : `vaut ${found}`} ; ce programme comprend ${oldest === newest ? newest : `${oldest} à ${newest}`}.`,
  'file.unknown-key': ({ key, owner, known }) => {
    const may =
      known.length === 0 ? 'ne contient rien dans cette version' : `peut contenir ${known.join(', ')}`;
    return `« ${key} » n’est pas connu : ${owner === '' ? 'le projet' : owner} ${may}.`;
  },
  'file.out-of-range': ({ field, value, bound, limit, counted }, { exact }) => {
    const unit = counted ? COUNTED[counted] : '';
    return `${nameField(field)} : ${exact(value)}${unit} ; il en faut ${BOUNDS[bound]} ${exact(limit)}${unit}.`;
  },
  'file.missing-choice': ({ field, choices }) =>
    `${nameField(field)} manque ; valeurs possibles : ${listChoices(choices)}.`,
  'file.wrong-choice': ({ field, found, choices }, { say }) =>
    `${nameField(field)} : trouvé ${say(found)} ; valeurs possibles : ${listChoices(choices)}.`,
  'file.missing-key': ({ field, wanted }) => `${nameField(field)} manque ; il faut ${WANTED[wanted]}.`,
  'file.wrong-type': ({ field, found, wanted }, { say }) =>
    `${nameField(field)} : trouvé ${say(found)} ; il faut ${WANTED[wanted]}.`,
  'file.wrong-pattern': ({ field, pattern }) =>
    `${nameField(field)} : valeur incomprise ; le texte doit suivre le modèle ${pattern}`,
  'file.too-many-names': ({ field, most }) =>
    `${nameField(field)} : valeur incomprise ; elle nomme plus de ${most} choses.`,
  'file.wrong-name': ({ field }) =>
    `${nameField(field)} : valeur incomprise ; ce nom n’est pas possible ici.`,
  'file.wrong-value': ({ field }) => `${nameField(field)} : valeur incomprise.`,
  'file.found-text': ({ text }) => `le texte « ${text} »`,
  'file.found-list': 'une liste',
  'file.found-object': 'un objet',
};

/** What is wrong with a file that was opened. */
export const project: Entries<ProjectPhrases> = { ...json, ...files };
