package strikeoff.artwork;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import javax.xml.namespace.QName;
import javax.xml.stream.XMLEventFactory;
import javax.xml.stream.XMLEventReader;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.events.Attribute;
import javax.xml.stream.events.XMLEvent;

/**
 * Hands out what was kept of a drawing, once: what was handed out is held no longer. Events are
 * made as they are asked for, since one takes many times the memory of what it says.
 */
final class SvgEvents implements XMLEventReader {

  private final XMLEventFactory events = XMLEventFactory.newDefaultFactory();
  private final List<Tag> tags;
  private int at;

  /** The one that was peeked at. */
  private XMLEvent ahead;

  /**
   * The beginning of an element, or its end.
   *
   * @param said names of its attributes, each with its value behind it; null of an end
   */
  record Tag(String name, String[] said) {}

  /**
   * @param tags of which each is taken out as it is handed on
   */
  SvgEvents(List<Tag> tags) {
    this.tags = tags;
  }

  @Override
  public boolean hasNext() {
    return at < tags.size();
  }

  @Override
  public XMLEvent nextEvent() {
    if (!hasNext()) {
      throw new NoSuchElementException();
    }
    XMLEvent next = peek();
    ahead = null;
    tags.set(at++, null);
    return next;
  }

  @Override
  public Object next() {
    return nextEvent();
  }

  @Override
  public XMLEvent peek() {
    if (ahead == null && hasNext()) {
      ahead = event(tags.get(at));
    }
    return ahead;
  }

  private XMLEvent event(Tag tag) {
    QName name = new QName(SvgLook.SVG, tag.name());
    if (tag.said() == null) {
      return events.createEndElement(name, null);
    }
    List<Attribute> attributes = new ArrayList<>();
    for (int i = 0; i < tag.said().length; i += 2) {
      attributes.add(events.createAttribute(tag.said()[i], tag.said()[i + 1]));
    }
    return events.createStartElement(name, attributes.iterator(), null);
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
    at = tags.size();
    ahead = null;
  }
}
