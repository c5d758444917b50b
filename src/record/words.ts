// The words that the record's fields may hold.

export const WORK = [
  'metal',
  'timber',
  'paint',
  'trim',
  'mechanical',
  'electrical',
  'assembly',
  'research',
  'shop',
] as const;
export const CONDITION = ['sound', 'worn', 'damaged', 'incomplete', 'missing'] as const;
export const FABRIC = [
  'original',
  'earlier-repair',
  'period-part',
  'reproduction',
  'new-made',
  'unknown',
] as const;
export const WAY = ['repair', 'reproduction', 'used-original', 'new-made', 'leave', 'other'] as const;
export const SIDE = ['left', 'right', 'centre'] as const;
export const STATE = ['before', 'trial', 'after'] as const;
export const SHOWS = ['before', 'during', 'after'] as const;
export const HAZARD = [
  'lead',
  'hot-work',
  'lifting',
  'forklift',
  'fuel',
  'silica',
  'spray',
  'asbestos',
  'wood-dust',
] as const;
export const TAXED = ['bought', 'outside', 'labour', 'materials', 'freight'] as const;
