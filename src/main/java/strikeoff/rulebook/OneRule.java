package strikeoff.rulebook;

import java.util.List;
import org.drools.model.EntryPoint;
import org.drools.model.Global;
import org.drools.model.Model;
import org.drools.model.Query;
import org.drools.model.Rule;
import org.drools.model.TypeMetaData;

/** A model cut down to one of its rules. */
record OneRule(Model whole, Rule rule) implements Model {

  @Override
  public String getName() {
    return whole.getName();
  }

  @Override
  public String getPackageName() {
    return whole.getPackageName();
  }

  @Override
  public List<Rule> getRules() {
    return List.of(rule);
  }

  @Override
  @SuppressWarnings("rawtypes") // as the interface has it
  public List<Global> getGlobals() {
    return whole.getGlobals();
  }

  @Override
  public List<Query> getQueries() {
    return whole.getQueries();
  }

  @Override
  public List<TypeMetaData> getTypeMetaDatas() {
    return whole.getTypeMetaDatas();
  }

  @Override
  public List<EntryPoint> getEntryPoints() {
    return whole.getEntryPoints();
  }
}
