/**
 * Makers of plugs, engines, vehicles and parts whose names must not appear anywhere, kept as digests so that they do not appear here either.
 * Add one with: printf '%s' name-in-lower-case | sha256sum | cut -c1-12
 */
export const TRADE_NAME_DIGESTS: ReadonlySet<string> = new Set([
  '02e17effe9de', '0600c79833cc', '09b7b4bebb61', '14f33ae1d3f0', '16103dd07c46', '1728f4f24f28', '1937c2d0cf82', '1c319d594acd', '1c39a01150f2',
  '201cd0cd6b8a', '27df9ed9a477', '298f2ddcda80', '2b584134ddc9', '2e11f2c2a8b0', '337b8d2c1e13', '37bfdcb4c507', '3ff84c5ea2ba', '40fc6718a81f',
  '42258bfc34d0', '4366c7a3d28b', '44e8dd36c54c', '489d50de70f3', '489e6ada109e', '4d13e1dbe7ab', '4e6a4dd00503', '573abb3ca06e', '61058a8bd466',
  '68a8771408b8', '6b0fa65fce76', '6bf72bb3e220', '6c414a1cded8', '6ed22f80faf4', '74a093c3383e', '75aa62551733', '77a45f25d31a', '78fe4a402ea1',
  '7915f1245732', '80537d65d479', '82a0673bad8e', '83dd9b6d31cd', '8417659f46b5', '845cbe2626fc', '917ebb3396b2', '9422d774e048', '9a046660abc6',
  '9a129b666b0f', '9ae875074aa2', '9c15e8160699', '9c4569379694', '9d601b0230c0', '9e48bad6e31c', 'a237bef830f2', 'a43d064e711b', 'a4a04fefd983',
  'a744d93f2c6e', 'a85edaa4a575', 'aa59343f9ebb', 'aafc5561d5b0', 'ac406da8455a', 'ac85892205b9', 'ae1d66d23e8c', 'aefc8a8af393', 'b0deb8897423',
  'b2808c947ea0', 'b3704083f1b6', 'b51026e4444f', 'b5bced848634', 'b8510932dad3', 'bccae4ce7be6', 'bdb80483fca7', 'c239b29d5de5', 'c40677cf313f',
  'c5626fc850ed', 'ca27a697d88a', 'cb69e5ea43e8', 'cea88363f7a4', 'd222a18d6474', 'd254fa846ea7', 'd2e03d69ca39', 'd501a5214317', 'd5e34819841c',
  'd9170e0cd016', 'd9a8ecb6f4bf', 'da973ce8f190', 'dc7bb5d07713', 'dd6c5828ddc6', 'e04c83e43180', 'e15111c1fd75', 'e462aa653afd', 'e4873839d496',
  'e697c5113ce5', 'ecbe7b16cfd6', 'eed59efb8160', 'f081f7b8d431', 'f0f62a07b978', 'f1dfe81dc03c', 'f4182874e746', 'f64dc92b8869', 'f681a08401e7',
  'f8e9af185475', 'fe9fc7844a7d',
]);
