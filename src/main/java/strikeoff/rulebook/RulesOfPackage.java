package strikeoff.rulebook;

import java.util.List;
import org.drools.model.DSL;
import org.drools.model.EntryPoint;
import org.drools.model.Global;
import org.drools.model.Model;
import org.drools.model.Query;
import org.drools.model.Rule;
import org.drools.model.TypeMetaData;

/**
 * Some rules of one package as a model. The model that the generator wrote makes all its rules when
 * it is made.
 */
record RulesOfPackage(String name, List<Rule> rules) implements Model {

  /** The one global that rules have. */
  static final String REPORTER = "reporter";

  RulesOfPackage {
    rules = List.copyOf(rules);
  }

  @Override
  public String getName() {
    return name;
  }

  @Override
  public String getPackageName() {
    return name;
  }

  @Override
  public List<Rule> getRules() {
    return rules;
  }

  @Override
  @SuppressWarnings("rawtypes") // as the interface has it
  public List<Global> getGlobals() {
    return List.of(DSL.globalOf(Reporter.class, name, REPORTER));
  }

  @Override
  public List<Query> getQueries() {
    return List.of();
  }

  @Override
  public List<TypeMetaData> getTypeMetaDatas() {
    return List.of();
  }

  @Override
  public List<EntryPoint> getEntryPoints() {
    return List.of();
  }
}
