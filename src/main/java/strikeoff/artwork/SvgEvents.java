package strikeoff.artwork;

import java.util.List;
import java.util.NoSuchElementException;
import javax.xml.stream.XMLEventReader;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.events.XMLEvent;

/** Hands out what was kept of a drawing, once: what was handed out is held no longer. */
final class SvgEvents implements XMLEventReader {

  private final List<XMLEvent> events;
  private int at;

  /**
   * @param events of which each is taken out as it is handed on
   */
  SvgEvents(List<XMLEvent> events) {
    this.events = events;
  }

  @Override
  public boolean hasNext() {
    return at < events.size();
  }

  @Override
  public XMLEvent nextEvent() {
    if (!hasNext()) {
      throw new NoSuchElementException();
    }
    return events.set(at++, null);
  }

  @Override
  public Object next() {
    return nextEvent();
  }

  @Override
  public XMLEvent peek() {
    return hasNext() ? events.get(at) : null;
  }

  @Override
  public String getElementText() throws XMLStreamException {
    StringBuilder text = new StringBuilder();
    while (!peek().isEndElement()) {
      XMLEvent event = nextEvent();
      if (!event.isCharacters()) {
        throw new XMLStreamException("an element where text was expected");
      }
      text.append(event.asCharacters().getData());
    }
    nextEvent();
    return text.toString();
  }

  @Override
  public XMLEvent nextTag() {
    XMLEvent event = nextEvent();
    while (event.isCharacters()) {
      event = nextEvent();
    }
    return event;
  }

  @Override
  public Object getProperty(String name) {
    throw new IllegalArgumentException(name);
  }

  @Override
  public void close() {
    at = events.size();
  }
}
