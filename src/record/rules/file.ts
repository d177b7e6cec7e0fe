import type { Rule } from './written.ts';

/** Files, tables and YAML as such. */
export const FILE_RULES = {
  'file/missing': {
    title: 'A required file is missing',
    why: 'A series needs series.yaml, machine.yaml and one chapter; without them there is nothing to publish.',
    severity: 'error',
    fixture: 'required-files-missing',
  },
  'file/empty': {
    title: 'A file is empty',
    why: 'An empty file is usually one that was not saved, or saved in the wrong place.',
    severity: 'error',
    fixture: 'every-file-empty',
  },
  'file/encoding': {
    title: 'A file is not UTF-8',
    why: 'In another encoding, letters such as ö, ° or µ turn into others without anyone noticing.',
    severity: 'error',
    fixture: 'wrong-encoding',
  },
  'file/nul': {
    title: 'A file holds NUL bytes',
    why: 'Text has none; the file is damaged or was saved by a program in its own format.',
    severity: 'error',
    fixture: 'nul-byte',
  },
  'file/too-large': {
    title: 'A file is too large',
    why: 'A limit keeps a wrong file from filling the memory.',
    severity: 'error',
    fixture: 'file-too-large',
  },
  'file/too-long': {
    title: 'A table has too many rows',
    why: 'A limit keeps a wrong file from filling the memory.',
    severity: 'error',
    fixture: 'table-too-long',
  },
  'file/unreadable': {
    title: 'A file cannot be read',
    why: 'It is a folder, or its permissions shut the program out.',
    severity: 'error',
    fixture: 'folder-in-place-of-file',
  },
  'file/unknown': {
    title: 'A file that nothing reads',
    why: 'A mistyped file name would otherwise lose its whole content in silence.',
    severity: 'warning',
    fixture: 'unknown-file',
  },
  'csv/unclosed-quote': {
    title: 'A quote is never closed',
    why: 'Everything after it would be read as one cell, and the rows would be lost.',
    severity: 'error',
    fixture: 'unclosed-quote',
  },
  'csv/after-quote': {
    title: 'Text follows a closing quote',
    why: 'It is unclear which part belongs to the cell.',
    severity: 'error',
    fixture: 'text-after-quote',
  },
  'csv/column-twice': {
    title: 'A column stands twice',
    why: 'One of the two would be lost.',
    severity: 'error',
    fixture: 'column-twice',
  },
  'csv/unknown-column': {
    title: 'A column that is not known',
    why: 'A mistyped heading would otherwise lose its cells in silence.',
    severity: 'warning',
    fixture: 'unknown-column',
  },
  'csv/missing-column': {
    title: 'A needed column is missing',
    why: 'The rows mean nothing without it.',
    severity: 'error',
    fixture: 'missing-column',
  },
  'csv/row-length': {
    title: 'A row has more or fewer cells than the heading',
    why: 'Its cells may have moved into the wrong columns.',
    severity: 'error',
    fixture: 'row-length',
  },
  'yaml/broken': {
    title: 'YAML cannot be read',
    why: 'The whole file depends on it.',
    severity: 'error',
    fixture: 'broken-yaml',
  },
  'yaml/key-twice': {
    title: 'A key stands twice',
    why: 'One of the two would be lost.',
    severity: 'error',
    fixture: 'yaml-key-twice',
  },
  'yaml/unknown-key': {
    title: 'A key that is not known',
    why: 'A mistyped key would otherwise lose its value in silence.',
    severity: 'warning',
    fixture: 'yaml-unknown-key',
  },
} satisfies Record<string, Rule>;
