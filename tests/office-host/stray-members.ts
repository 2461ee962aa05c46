import { loadOffice } from "./load-office.ts";

/**
 * Watches every object that the client library makes from now on. The answer lists members that were put on them
 * from outside: a property the library does not know type-checks, sends nothing and fails nowhere.
 */
export function watchMembers(): () => string[] {
  loadOffice();
  const { ActionFactory } = OfficeExtension as unknown as {
    ActionFactory: { createInstantiateAction(context: unknown, object: object): unknown };
  };
  const made = new Set<object>();
  const create = ActionFactory.createInstantiateAction;
  ActionFactory.createInstantiateAction = (context, object) => {
    made.add(object);
    return create(context, object);
  };
  return () => {
    ActionFactory.createInstantiateAction = create;
    // The library's own fields all begin with an underscore or m_.
    return [...made].flatMap((object) => Object.keys(object).filter((key) => !/^(_|m_)/.test(key)));
  };
}
