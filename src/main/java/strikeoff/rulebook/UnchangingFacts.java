package strikeoff.rulebook;

import org.kie.api.conf.ConfigurationKey;
import org.kie.api.conf.OptionKey;
import org.kie.api.conf.OptionsConfiguration;
import org.kie.internal.builder.KnowledgeBuilderConfiguration;
import org.kie.internal.builder.conf.KnowledgeBuilderOption;
import org.kie.internal.builder.conf.MultiValueKieBuilderOption;
import org.kie.internal.builder.conf.PropertySpecificOption;
import org.kie.internal.builder.conf.SingleValueKieBuilderOption;

/**
 * Tells the linker that no rule changes a fact, so that it need not look up for each condition
 * which of a fact's values could wake it: a sixth of the time that linking takes. The engine's own
 * class for such options would load its compiler.
 */
final class UnchangingFacts implements KnowledgeBuilderConfiguration {

  static final KnowledgeBuilderConfiguration FACTS = new UnchangingFacts();

  private UnchangingFacts() {}

  @Override
  @SuppressWarnings("unchecked") // the key's type is the option's
  public <C extends SingleValueKieBuilderOption> C getOption(OptionKey<C> key) {
    return key.equals(PropertySpecificOption.KEY) ? (C) PropertySpecificOption.DISABLED : null;
  }

  @Override
  public ClassLoader getClassLoader() {
    return UnchangingFacts.class.getClassLoader();
  }

  @Override
  public void makeImmutable() {}

  @Override
  public <C extends KnowledgeBuilderOption> void setOption(C option) {
    throw new UnsupportedOperationException();
  }

  @Override
  public boolean setProperty(String name, String value) {
    throw new UnsupportedOperationException();
  }

  @Override
  public String getProperty(String name) {
    return null;
  }

  @Override
  public <
          X extends
              OptionsConfiguration<
                      KnowledgeBuilderOption,
                      SingleValueKieBuilderOption,
                      MultiValueKieBuilderOption>>
      X as(ConfigurationKey<X> key) {
    throw new UnsupportedOperationException();
  }
}
