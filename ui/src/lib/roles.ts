/** What a recording is used for in a proof of one build. */
export type Role = 'fit' | 'predict' | 'none';
export type Roles = Readonly<Record<string, Role>>;

/** As the last proof had it, else by name: the first recording of the build is fitted, its others predicted. */
export function suggested(build: string, names: readonly string[], last: { readonly fit: readonly string[]; readonly predict: readonly string[] } | null): Roles {
  const roles: Record<string, Role> = {};
  if (last) {
    last.fit.forEach((name) => { roles[name] = 'fit'; });
    last.predict.forEach((name) => { roles[name] = 'predict'; });
    return roles;
  }
  names.filter((name) => name.toLowerCase().startsWith(build.toLowerCase())).forEach((name, i) => {
    roles[name] = i === 0 ? 'fit' : 'predict';
  });
  return roles;
}

/** What a person chose lies over what is suggested. */
export function rolesOf(names: readonly string[], chosen: Roles, suggestion: Roles): Roles {
  return Object.fromEntries(names.map((name) => [name, chosen[name] ?? suggestion[name] ?? 'none']));
}

export const withRole = (roles: Roles, role: Role): readonly string[] => Object.keys(roles).filter((name) => roles[name] === role);
